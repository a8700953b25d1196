"""A clock inside the page: from the key event to the painted picture."""

import time

# Listens for keys in the capture phase, before anybody else; a picture counts as painted once
# the frame that shows it has been handed to the screen.
INSTALL = """(way) => {
  const clock = { way, keys: [], painted: [], released: 0 };
  window.ckClock = clock;
  const shown = () => requestAnimationFrame(() => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => clock.painted.push(performance.now());
    channel.port2.postMessage(0);
  });
  window.addEventListener('keydown', () => clock.keys.push(performance.now()), true);
  window.addEventListener('pointerup', () => { clock.released = performance.now(); }, true);
  if (way === 'ours') {
    new MutationObserver(shown).observe(document.querySelector('.ck-picture'), {childList: true});
  } else {
    document.addEventListener('load', (e) => { if (e.target.tagName === 'IMG') shown(); }, true);
  }
}"""


def install(page, way: str) -> None:
    """Start the clock of a page that shows one way."""
    page.evaluate(INSTALL, way)


def painted(page) -> int:
    """Count the pictures painted so far."""
    return page.evaluate("window.ckClock.painted.length")


def step_times(page, presses: int, pause: float = 150.0) -> list[float]:
    """Press a key again and again, with a pause for each picture; give the times [ms].

    Nothing is asked of the page meanwhile: a page that is asked questions paints later.
    """
    before = page.evaluate("[window.ckClock.keys.length, window.ckClock.painted.length]")
    for _press in range(presses):
        page.keyboard.press("ArrowRight")
        page.wait_for_timeout(pause)
    page.wait_for_timeout(3 * pause)
    keys, painted = page.evaluate("[window.ckClock.keys, window.ckClock.painted]")
    return [
        next((shown - pressed for shown in painted[before[1] :] if shown > pressed), float("inf"))
        for pressed in keys[before[0] :]
    ]


def drag(page, handle, way: float, seconds: float) -> dict:
    """Drag a handle to and fro, sixty times a second; give pictures per second and lag [ms]."""
    box = handle.bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    before = page.evaluate("[window.ckClock.painted.length, performance.now()]")
    steps, k, end = 60, 0, time.monotonic() + seconds
    while time.monotonic() < end:
        due = time.monotonic() + 1 / 60
        page.mouse.move(x + way * abs((k % (2 * steps)) - steps) / steps, y)
        k += 1
        time.sleep(max(due - time.monotonic(), 0.0))
    after = page.evaluate("[window.ckClock.painted.length, performance.now()]")
    page.mouse.move(x + way / 3, y)
    page.mouse.up()
    page.wait_for_timeout(800)
    lag = page.evaluate("window.ckClock.painted.at(-1) - window.ckClock.released")
    rate = 1000 * (after[0] - before[0]) / (after[1] - before[1])
    return {"pictures_per_second": rate, "lag_ms": max(lag, 0.0)}

"""A clock inside the page: from the key event to the painted picture."""

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


def step_times(page, presses: int) -> list[float]:
    """Press a key again and again, wait for each picture; give the times [ms]."""
    times = []
    for _press in range(presses):
        before = painted(page)
        page.keyboard.press("ArrowRight")
        page.wait_for_function("n => window.ckClock.painted.length > n", arg=before)
        last = "[window.ckClock.keys.at(-1), window.ckClock.painted.at(-1)]"
        pressed, shown = page.evaluate(last)
        times.append(shown - pressed)
        page.wait_for_timeout(40)
    return times


def drag(page, handle, way: float, seconds: float) -> dict:
    """Drag a handle to and fro; give pictures per second and the lag after release [ms]."""
    box = handle.bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    before = page.evaluate("[window.ckClock.painted.length, performance.now()]")
    steps, end, k = 60, before[1] + 1000 * seconds, 0
    while page.evaluate("performance.now()") < end:
        share = abs((k % (2 * steps)) - steps) / steps
        page.mouse.move(x + way * share, y)
        k += 1
    after = page.evaluate("[window.ckClock.painted.length, performance.now()]")
    page.mouse.move(x + way / 3, y)
    page.mouse.up()
    page.wait_for_timeout(800)
    lag = page.evaluate("window.ckClock.painted.at(-1) - window.ckClock.released")
    rate = 1000 * (after[0] - before[0]) / (after[1] - before[1])
    return {"pictures_per_second": rate, "lag_ms": max(lag, 0.0)}

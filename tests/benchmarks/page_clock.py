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
    // parts of the drawing are changed or made anew, or all of it; the line of a hint does not
    // count, nor how a grip looks while it is held
    const drawn = (record) => record.attributeName !== 'class'
      && (record.target.closest('svg') || record.target.querySelector('svg'));
    const watched = {childList: true, subtree: true, attributes: true};
    new MutationObserver((records) => { if (records.some(drawn)) shown(); })
      .observe(document.querySelector('.ck-picture'), watched);
  } else {
    document.addEventListener('load', (e) => { if (e.target.tagName === 'IMG') shown(); }, true);
  }
}"""


HELD = 80.0  # ms that a finger rests on a key


def install(page, way: str) -> None:
    """Start the clock of a page that shows one way."""
    page.evaluate(INSTALL, way)


def painted(page) -> int:
    """Count the pictures painted so far."""
    return page.evaluate("window.ckClock.painted.length")


def step_times(page, presses: int, pause: float = 150.0) -> list[float]:
    """Press a key again and again, with a pause for each picture; give the times [ms].

    Half of the way there, and back: no range is so short that it would end on the way. Nothing is
    asked of the page meanwhile: a page that is asked questions paints later. A key is held as long
    as a finger holds it: let go at once, it would be in the way of the picture.
    """
    before = page.evaluate("[window.ckClock.keys.length, window.ckClock.painted.length]")
    for press in range(presses):
        page.keyboard.press("ArrowRight" if press < presses / 2 else "ArrowLeft", delay=HELD)
        page.wait_for_timeout(pause - HELD)
    page.wait_for_timeout(3 * pause)
    keys, painted = page.evaluate("[window.ckClock.keys, window.ckClock.painted]")
    return [
        next((shown - pressed for shown in painted[before[1] :] if shown > pressed), float("inf"))
        for pressed in keys[before[0] :]
    ]


# Moves the grip from inside the page, sixty times a second, as a hand would: a driver outside
# would take a good part of two cores for itself.
MOVE = """([x, y, way, seconds, low]) => new Promise((done) => {
  const grip = document.elementFromPoint(x, y), start = performance.now();
  const before = window.ckClock.painted.length;
  let k = 0;
  const id = setInterval(() => {
    const share = Math.abs((k++ % 120) - 60) / 60, passed = performance.now() - start;
    if (grip.type === 'range') {
      grip.value = Number(grip.min) + (low + 0.3 * share) * (grip.max - grip.min);
      grip.dispatchEvent(new Event('input'));
    } else {
      const at = { clientX: x + way * share, clientY: y, bubbles: true, pointerId: 1, buttons: 1 };
      grip.isConnected && grip.dispatchEvent(new MouseEvent('mousemove', at));
      const box = document.querySelector('.ck-picture') ?? document;
      box.dispatchEvent(new PointerEvent('pointermove', at));
    }
    if (passed < 1000 * seconds) return;
    clearInterval(id);
    done(1000 * (window.ckClock.painted.length - before) / passed);
  }, 1000 / 60);
})"""


def drag(page, handle, way: float, seconds: float, low: float = 0.0) -> dict:
    """Drag a handle to and fro; give pictures per second, and the lag after release [ms].

    A slider is dragged over 0.3 of its range, from the share `low` on.
    """
    handle.scroll_into_view_if_needed()
    box = handle.bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    rate = page.evaluate(MOVE, [x, y, way, seconds, low])
    page.mouse.move(x + way / 3, y)
    page.mouse.up()
    page.wait_for_timeout(800)
    lag = page.evaluate("window.ckClock.painted.at(-1) - window.ckClock.released")
    return {"pictures_per_second": rate, "lag_ms": max(lag, 0.0)}

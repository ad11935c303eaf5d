/** Saw cards one piece at a time: next and back by button, key or swipe, and the place kept where the phone was put down. */

/** Pixels that a finger moves sideways for another piece. */
const SWIPE = 60;

/** Turns every saw card of the page into one that shows a single piece, with a button that shows all. */
export function sawCards(): void {
  for (const card of document.querySelectorAll<HTMLElement>('[data-saw]')) oneByOne(card);
}

function oneByOne(card: HTMLElement): void {
  const pieces = [...card.querySelectorAll<HTMLElement>('.piece')];
  if (pieces.length < 2) return;
  const name = `${document.body.dataset.page} ${card.dataset.saw}`;
  const start = Number(kept(name) ?? 0);
  let at = Number.isInteger(start) && start >= 0 && start < pieces.length ? start : 0;
  const show = (place: number, byHand: boolean): void => {
    at = Math.max(0, Math.min(pieces.length - 1, place));
    for (const [i, piece] of pieces.entries()) piece.classList.toggle('away', i !== at);
    keep(name, String(at));
    if (byHand) pieces[at]?.focus({ preventScroll: true });
    if (byHand) card.scrollIntoView({ block: 'start', behavior: 'instant' });
  };
  card.classList.add('one');
  card.addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest('a[rel]') : null;
    if (!link) return;
    event.preventDefault();
    show(at + (link.getAttribute('rel') === 'next' ? 1 : -1), true);
    void stayAwake();
  });
  card.addEventListener('keydown', (event) => {
    if (event.key === 'ArrowRight' || event.key === 'ArrowLeft') show(at + (event.key === 'ArrowRight' ? 1 : -1), true);
  });
  let from: { readonly x: number; readonly y: number } | undefined;
  card.addEventListener(
    'touchstart',
    ({ touches }) => {
      const [touch] = touches;
      from = touch && touches.length === 1 ? { x: touch.clientX, y: touch.clientY } : undefined;
    },
    { passive: true },
  );
  card.addEventListener('touchend', ({ changedTouches }) => {
    const [touch] = changedTouches;
    if (!from || !touch) return;
    const [dx, dy] = [touch.clientX - from.x, touch.clientY - from.y];
    if (Math.abs(dx) > SWIPE && Math.abs(dx) > 2 * Math.abs(dy)) show(at + (dx < 0 ? 1 : -1), true);
  });
  // A link to one piece, such as the one that a message holds, shows that piece.
  const linked = pieces.findIndex(({ id }) => `#${id}` === location.hash);
  show(linked < 0 ? at : linked, false);
}

/** A screen that goes dark must not be woken with a glove; where the browser does not offer it, it does go dark. */
async function stayAwake(): Promise<void> {
  try {
    await navigator.wakeLock.request('screen');
  } catch {
    // Not offered, not allowed, or the battery is low.
  }
}

function kept(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

function keep(name: string, value: string): void {
  try {
    localStorage.setItem(name, value);
  } catch {
    // Then it begins at the first piece next time.
  }
}

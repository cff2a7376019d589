// The plant's time on a phone whose own clock may be wrong: how far it is off is learned from each answer of the server and kept
// for hours without signal. Times of measuring are told by it.
const name = 'wearwatch-clock-off-ms';
const coarse = 2_000; // an answer tells its second, and took a while
const worthTelling = 120_000;
let off = kept();

/** The moment, by the server's clock as far as it is known. */
export const now = () => Date.now() + off;

/** The same as it is sent. */
export const nowIso = () => new Date(now()).toISOString();

/** By how many milliseconds the phone's clock is slow; negative when it is fast; 0 while it is right to within two minutes. */
export const offWorthTelling = () => (Math.abs(off) >= worthTelling ? off : 0);

/** Learns from an answer that was asked for at a moment of the phone's own clock. */
export function learn(response, askedAt) {
  const told = Date.parse(response.headers.get('Date') ?? '');
  if (Number.isNaN(told)) return;
  const middle = (askedAt + Date.now()) / 2;
  const by = told + 500 - middle;
  off = Math.abs(by) < coarse ? 0 : Math.round(by);
  try {
    globalThis.localStorage?.setItem(name, String(off));
  } catch {
    // It is learned anew from the next answer.
  }
}

function kept() {
  try {
    return Number(globalThis.localStorage?.getItem(name) ?? 0) || 0;
  } catch {
    return 0;
  }
}

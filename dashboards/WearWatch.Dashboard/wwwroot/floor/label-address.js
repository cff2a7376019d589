// What a label's code holds: the address of a position, /floor/at/MARK/ID, under whatever name the plant's server had when it was
// printed. The mark says which plant it is of.

/** The position of a label: { mark, id }; null for the address of something else. */
export function positionOf(address) {
  const found = /^\/floor\/at\/([^/]+)\/(\d+)$/.exec(address.pathname);
  return found && { mark: found[1], id: found[2] };
}

/** The same of what a code says; null also for what is no address. */
export const positionIn = text => (URL.canParse(text) ? positionOf(new URL(text)) : null);

/** The screen of a position. */
export const screenOf = ({ mark, id }) => `#/label/${id}/${mark}`;

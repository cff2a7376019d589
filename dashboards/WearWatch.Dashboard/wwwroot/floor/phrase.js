// What is to be said, before it is put into a language: an English form such as "{0} of {1} points found", which is the key of
// its translations, and the facts that fill its holes. An entry keeps its words so, and they are read in any language later.

/** A tag: phrase`${n} of ${m} points found`. A fact is a number, data as text, a figure such as { percent: 1.25 }, a phrase. */
export const phrase = (texts, ...facts) => ({ form: formOf(texts), facts });

/** The form of a tagged text: a numbered hole for each fact. */
export const formOf = texts => texts.reduce((form, text, i) => `${form}{${i - 1}}${text}`);

/** One form for a single thing, another for none or several. */
export const counted = (n, one, several) => (n === 1 ? one : several);

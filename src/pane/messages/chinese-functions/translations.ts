/** Texts in another language by what they say in English, so that a changed English text is seen to lack its twin. */
export type Translations = Readonly<Record<string, string>>;

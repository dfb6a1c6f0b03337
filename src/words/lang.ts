/** The languages a customer reads. */
export type Lang = 'en' | 'es';

/** The same words in every language. */
export type InEach<Words> = Readonly<Record<Lang, Words>>;

/** Every sentence the tool can say, in English: one table, made of one file for each part of the core. */
export const english: Readonly<Record<string, string>> = {}

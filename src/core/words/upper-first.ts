/** With a capital letter at its front, as a line or a sentence begins. */
export const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

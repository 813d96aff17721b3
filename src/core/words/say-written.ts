import type { Figure } from '../figure'
import type { Message, MessageValue } from '../message'
import { type Display, figureText } from './format'
import { upperFirst } from './upper-first'

/**
 * The words of a message as it carries them with it. Templates hold `{name}` for a value in words, `{name:signed}` for a
 * height from the line, `{name:bare}` without its unit, `{name:pm}` with its precision. A message without words is our own
 * bug and is said loudly.
 */
export function sayWritten({ key, values, template }: Message, display: Display = 'mm'): string {
  if (template === undefined) return `[no words for ${key}]`
  const said = template.replace(/\{(\w+)(?::(\w+))?\}/g, (_, name: string, style: string | undefined) => {
    const value = values[name]
    return value === undefined ? `[no ${name}]` : valueText(value, style, display)
  })
  // Names stand in lower case, as they are said within a sentence; a whole sentence may begin with one.
  return template.startsWith('{') && template.endsWith('.') ? upperFirst(said) : said
}

function valueText(value: MessageValue, style: string | undefined, display: Display): string {
  if (typeof value === 'string') return value
  if (typeof value === 'number') return String(value)
  return styled(value, style, display)
}

function styled(figure: Figure, style: string | undefined, display: Display): string {
  return figureText(figure, {
    display,
    signed: style === 'signed',
    withUnit: style !== 'bare',
    withPm: style === 'pm',
  })
}

import type { CSSProperties } from 'react'
import { PICTURES } from './pictures'

/** Colours of ISO 3864; nowhere but inside a sign. */
const YELLOW = '#f9a800'
const RED = '#9b2423'
const BLUE = '#005387'
const GREEN = '#237f52'
const BLACK = '#2b2b2c'
const WHITE = '#ffffff'

const ground = (color: string): CSSProperties => ({ '--ground': color }) as CSSProperties

/**
 * A safety sign after ISO 7010 in the shape and colour ISO 3864 gives its kind: a triangle warns, a blue disc says what
 * must be done, a red ring with a bar what must not. The words always stand beside it, so to a screen reader it is silent.
 */
export function Sign({ code }: { readonly code: string }) {
  return (
    <svg viewBox="0 0 100 100" aria-hidden="true" focusable="false">
      <Ground code={code} />
    </svg>
  )
}

function Ground({ code }: { readonly code: string }) {
  const kind = code.charAt(0)
  const picture = PICTURES[code] ?? PICTURES[`${kind}001`]
  if (kind === 'M') {
    return (
      <>
        <circle cx="50" cy="50" r="49" fill={BLUE} />
        <g fill={WHITE} color={WHITE} style={ground(BLUE)}>
          {picture}
        </g>
      </>
    )
  }
  if (kind === 'P') {
    return (
      <>
        <circle cx="50" cy="50" r="49" fill={WHITE} />
        <g fill={BLACK} color={BLACK} style={ground(WHITE)}>
          {picture}
        </g>
        <circle cx="50" cy="50" r="43.5" fill="none" stroke={RED} strokeWidth="10" />
        <path d="M20 20 80 80" stroke={RED} strokeWidth="8.5" />
      </>
    )
  }
  if (kind === 'E' || kind === 'F') {
    return (
      <>
        <path d="M2 2h96v96H2z" fill={kind === 'E' ? GREEN : RED} />
        <g fill={WHITE} color={WHITE}>
          {picture}
        </g>
      </>
    )
  }
  return (
    <>
      <path d="M50 10 95 87H5z" fill={YELLOW} stroke={YELLOW} strokeWidth="8" strokeLinejoin="round" />
      <path d="M50 13 92 85H8z" fill={YELLOW} stroke={BLACK} strokeWidth="7" strokeLinejoin="round" />
      <g fill={BLACK} color={BLACK} style={ground(YELLOW)}>
        {picture}
      </g>
    </>
  )
}

import type { ReactElement } from 'react'

/**
 * Safety signs after ISO 7010, in the shapes and colours of ISO 3864: yellow triangle for a warning, blue disc for
 * what must be done, red ring with a bar for what must not. Always shown with words.
 */
const PICTURES: Readonly<Record<string, ReactElement>> = {
  W001: (
    <>
      <rect x="46.5" y="34" width="7" height="30" rx="3" />
      <circle cx="50" cy="74" r="4.6" />
    </>
  ),
  W008: <path d="M24 80h22v-8H24zM52 44l-6-6 4-4 8 4 4 10 10-2 1 5-13 4-4-4-2 10 10 6-2 15h-5l1-12-12-6z" />,
  W011: <path d="M28 78h46v4H28zM58 34a5 5 0 1 1-10 0 5 5 0 0 1 10 0zM46 42l10 2 4 12 12-4 2 4-16 6-6-7-4 10 14 10-3 4-18-12z" />,
  W012: <path d="M56 30 38 56h11l-6 24 21-30H52z" />,
  W015: <path d="M48.500 30h3v12h-3zM34 42h32v16H34zM30 80h40v-4H30zM44 74l6-10 6 10z" />,
  W019: <path d="M26 34h6v46h-6zM68 34h6v46h-6zM36 54h8l-3-4 4-3 8 9-8 9-4-3 3-4h-8zM50 76h4V44h-4z" />,
  W022: <path d="M30 74 64 36l6 2-4 12-28 28zM30 78h14v4H30z" />,
  W024: <path d="M26 36h48v10H26zM26 72h48v10H26zM38 52h22a6 6 0 0 1 0 12H46l-8 4z" />,
  W035: <path d="M40 32h9v9h-9zM54 40h9v9h-9zM44 52h8v8h-8zM40 78a10 8 0 0 1 20 0v4H40z" />,
  W007: <path d="M26 78h48v4H26zM62 66h12v10H62zM42 36a5 5 0 1 1 10 0 5 5 0 0 1-10 0zM42 44l10 2 2 14 8 8-4 3-10-9-4 12h-6l5-16z" />,
  M001: (
    <>
      <rect x="45" y="24" width="10" height="36" rx="4" fill="#fff" />
      <circle cx="50" cy="72" r="6" fill="#fff" />
    </>
  ),
  M002: <path fill="#fff" d="M26 32c10-4 18-2 24 4 6-6 14-8 24-4v36c-10-4-18-2-24 4-6-6-14-8-24-4zm22 10c-5-4-10-5-17-4v25c7-1 12 0 17 3zm4 24c5-3 10-4 17-3V38c-7-1-12 0-17 4z" />,
  M003: <path fill="#fff" d="M50 26a20 22 0 0 1 20 22v4a7 12 0 0 1-4 16h-4V44a12 14 0 0 0-24 0v24h-4a7 12 0 0 1-4-16v-4a20 22 0 0 1 20-22z" />,
  M004: <path fill="#fff" d="M22 44h56v6h-4a12 12 0 0 1-23 3 4 4 0 0 0-2 0 12 12 0 0 1-23-3h-4z" />,
  M008: <path fill="#fff" d="M38 26h14v26l20 8c4 2 4 6 4 12H38z" />,
  M009: <path fill="#fff" d="M36 74V44l-8-8 4-4 10 8V26h6v12h4V24h6v14h4V28h6v26l-6 20z" />,
  M016: <path fill="#fff" d="M32 44c12-6 24-6 36 0v10c0 10-8 18-18 18s-18-8-18-18zM24 42l8 4v4l-8-4zM76 42l-8 4v4l8-4z" />,
  M021: <path fill="#fff" d="M24 46h16v8H24zM40 40h10v20H40zM62 40h8v5h8v4h-8v4h8v4h-8v3h-8z" />,
  P001: <></>,
  P003: <path d="M50 28c8 10 14 16 14 26a14 16 0 0 1-28 0c0-8 8-12 14-26z" />,
  P010: <path d="M38 70V44h5v8l3-20h5v18l3-16h5v18l6-6 4 4-10 20z" />,
  P012: <path d="M34 46h32l6 28H28zM44 40a6 6 0 1 1 12 0v4H44z" />,
  P019: <path d="M38 28h14v24l16 8v10H38z" />,
}

export function Sign({ code, label }: { readonly code: string; readonly label: string }) {
  return (
    <svg viewBox="0 0 100 100" role="img" aria-label={`Sign ${code}: ${label}`}>
      <title>{label}</title>
      <Ground code={code} />
    </svg>
  )
}

function Ground({ code }: { readonly code: string }) {
  const picture = PICTURES[code] ?? (code.startsWith('M') ? PICTURES['M001'] : PICTURES['W001'])
  if (code.startsWith('M')) {
    return (
      <>
        <circle cx="50" cy="50" r="48" fill="#005387" />
        {picture}
      </>
    )
  }
  if (code.startsWith('P')) {
    return (
      <>
        <circle cx="50" cy="50" r="48" fill="#fff" />
        {picture}
        <circle cx="50" cy="50" r="42" fill="none" stroke="#9b2423" strokeWidth="10" />
        <path d="M20 20 80 80" stroke="#9b2423" strokeWidth="10" />
      </>
    )
  }
  return (
    <>
      <path
        d="M50 10 94 86H6z"
        fill="#f9a800"
        stroke="#2b2b2c"
        strokeWidth="7"
        strokeLinejoin="round"
      />
      <g fill="#2b2b2c">{picture}</g>
    </>
  )
}

import type { ReactElement } from 'react'

/**
 * The pictures of the safety signs by their ISO 7010 number, on a field of 100 by 100, drawn anew and simply. `currentColor`
 * is the colour of the picture, `var(--ground)` that of the sign behind it.
 */
const limb = {
  fill: 'none',
  stroke: 'currentColor',
  strokeWidth: 5.5,
  strokeLinecap: 'round',
  strokeLinejoin: 'round',
} as const
const cut = {
  fill: 'none',
  stroke: 'var(--ground)',
  strokeWidth: 3,
  strokeLinecap: 'round',
  strokeLinejoin: 'round',
} as const

const head = (x: number, y: number, r = 5) => <circle cx={x} cy={y} r={r} />
const face = <path d="M50 22c13 0 20 9 20 22v10c0 14-9 26-20 26S30 68 30 54V44c0-13 7-22 20-22z" />

const WARNINGS: Readonly<Record<string, ReactElement>> = {
  W001: (
    <>
      <path d="M45.5 36h9l-2 26h-5z" />
      <circle cx="50" cy="71" r="4.8" />
    </>
  ),
  W007: (
    <>
      <path d="M24 76h52v4H24zM61 66h11v10H61z" />
      {head(45, 39)}
      <path {...limb} d="M46 47l4 13 8 5M50 60l-8 9-9 1M47 49l10 5M46 48l-9 5" />
    </>
  ),
  W008: (
    <>
      <path d="M24 62h23v18H24z" />
      {head(64, 47)}
      <path {...limb} d="M59 52l-8 5M51 57l9 8 8-1M51 57l-3-10M59 52l10 6M58 52l-1-10" />
    </>
  ),
  W011: (
    <>
      <path d="M24 76h52v4H24z" />
      {head(60, 40)}
      <path {...limb} d="M57 47l-9 12 13 4 8 8M48 59l-9 2-8 9M56 48l-11-1-5 6M57 48l10 4" />
    </>
  ),
  W012: <path d="M56 30 39 56h10l-5 15-4.5-1.5L45 82l9-9-4.5-1.5L61 50H50.5L61 30z" />,
  W015: (
    <>
      <path d="M48.5 28h3v9h-3zM37 48l13-11 13 11v14H37zM31 76h38v4H31z" />
      <path {...cut} strokeWidth={2.5} d="M41 47l9-7.5 9 7.5z" fill="var(--ground)" />
    </>
  ),
  W017: (
    <path d="M26 74h48v5H26zM36 68c-6-7 6-11 0-19 8 6 1 12 5 19zM49 68c-6-7 6-13 0-23 8 8 1 15 5 23zM62 68c-6-7 6-11 0-19 8 6 1 12 5 19z" />
  ),
  W019: (
    <>
      <path d="M25 52h9v28h-9zM66 52h9v28h-9z" />
      {head(50, 45)}
      <path {...limb} d="M50 54v12M45 79l5-13 5 13M43 62l2-7h10l2 7" />
      <path d="M36 64l5 3-5 3zM64 64l-5 3 5 3z" />
    </>
  ),
  W021: (
    <path d="M50 32c3 10 14 15 14 29 0 9-6 15-14 15s-14-6-14-15c0-7 4-10 6-16 1 4 2 6 4 7 3-6 1-12 4-20zM30 77h40v4H30z" />
  ),
  W022: (
    <>
      <path d="M66 32 40 74l-10 6 3-11 27-41z" />
      <path d="M48 80c6-9 13-13 24-13v9c-8 0-14 2-18 5z" />
    </>
  ),
  W024: (
    <>
      <path d="M33 36h34v9H33zM26 74h48v7H26z" />
      <path d="M26 63h12c4-6 9-8 15-8h16a3 3 0 0 1 0 6h2a3 3 0 0 1 0 6h-3a3 3 0 0 1-1 5H26z" />
      <path d="M46 46h8v3h4l-8 6-8-6h4z" />
    </>
  ),
  W035: (
    <>
      <path d="M43 29h10v10H43zM54 42l9-3 3 9-9 3zM36 45l8-4 4 8-8 4z" />
      {head(50, 62, 6)}
      <path d="M35 81c0-9 6-12 15-12s15 3 15 12z" />
    </>
  ),
}

const MUST_DO: Readonly<Record<string, ReactElement>> = {
  M001: (
    <>
      <path d="M43 20h14l-3.5 38h-7z" />
      <circle cx="50" cy="73" r="7.5" />
    </>
  ),
  M002: (
    <>
      {head(50, 27, 10)}
      <path d="M22 47c11-4 20-2 28 4 8-6 17-8 28-4v28c-11-4-20-2-28 4-8-6-17-8-28-4z" />
      <path
        {...cut}
        d="M50 53v24M29 54c6-1 11 0 15 3M29 62c6-1 11 0 15 3M71 54c-6-1-11 0-15 3M71 62c-6-1-11 0-15 3"
      />
    </>
  ),
  M003: (
    <>
      {face}
      <path {...limb} strokeWidth={6} stroke="var(--ground)" d="M26 56V42c0-14 10-24 24-24s24 10 24 24v14" />
      <path {...limb} strokeWidth={5} d="M24 46c0-18 10-31 26-31s26 13 26 31" />
      <rect x="18" y="42" width="15" height="25" rx="6" stroke="var(--ground)" strokeWidth="3" />
      <rect x="67" y="42" width="15" height="25" rx="6" stroke="var(--ground)" strokeWidth="3" />
    </>
  ),
  M004: (
    <>
      {face}
      <path
        fill="var(--ground)"
        d="M25 39h50v6l-3 12c-1 4-4 5-8 5h-4c-4 0-6-2-8-8-1-3-3-3-4 0-2 6-4 8-8 8h-4c-4 0-7-1-8-5l-3-12z"
      />
      <path d="M32 44h14l-2 9c-1 3-2 4-4 4h-2c-2 0-4-1-4-4zM68 44H54l2 9c1 3 2 4 4 4h2c2 0 4-1 4-4z" />
    </>
  ),
  M006: (
    <>
      <path d="M24 44h20c8 0 14 3 14 8s-6 8-14 8H24z" />
      <path d="M58 45h9v4h-9zM58 55h9v4h-9z" />
      <path {...limb} d="M24 52h-6M74 38h8v28h-8" />
    </>
  ),
  M008: <path d="M34 24h18v24c0 5 4 7 10 9l9 3c5 2 7 5 7 10v3H34zM34 75h44v6H34z" />,
  M009: (
    <path d="M37 80V62L25 47c-3-4 2-9 6-5l8 8V26a4.5 4.5 0 0 1 9 0v-3a4.5 4.5 0 0 1 9 0v4a4.5 4.5 0 0 1 9 0v5a4 4 0 0 1 8 0v24c0 8-2 13-6 18v6z" />
  ),
  M014: (
    <>
      <path d="M31 50h38v6c0 14-8 25-19 25S31 70 31 56z" />
      <path d="M24 46c0-15 11-26 26-26s26 11 26 26h5v6H19v-6z" stroke="var(--ground)" strokeWidth="2.5" />
    </>
  ),
  M016: (
    <>
      {face}
      <path fill="var(--ground)" d="M28 51l12-3 10-3 10 3 12 3v5l-5 3c-2 12-9 17-17 17s-15-5-17-17l-5-3z" />
      <path d="M37 54l13-4 13 4c0 11-5 18-13 18s-13-7-13-18z" />
      <path {...cut} strokeWidth={2.5} d="M41 58h18M42 64h16" />
    </>
  ),
  M017: (
    <>
      {face}
      <path fill="var(--ground)" d="M30 50l20-6 20 6v14c0 10-9 18-20 18s-20-8-20-18z" />
      <path d="M43 52h14v16c0 4-3 7-7 7s-7-3-7-7z" />
      <circle cx="32" cy="66" r="10.5" stroke="var(--ground)" strokeWidth="3" />
      <circle cx="68" cy="66" r="10.5" stroke="var(--ground)" strokeWidth="3" />
    </>
  ),
  M021: (
    <>
      <path d="M24 66h52v8H24z" />
      <path {...limb} d="M34 66v-8M66 66v-12" />
      <path {...limb} strokeWidth={7} d="M34 57 60 31" />
      <circle cx="62" cy="28" r="6.5" />
      <circle cx="66" cy="52" r="5" />
    </>
  ),
  M031: (
    <>
      <path d="M20 66h60v8H20z" />
      <path d="M32 64a20 20 0 0 1 40 0h-6a14 14 0 0 0-28 0z" />
      <path d="M44 64l2-5 3 2 2-4 3 3 3-2 2 6z" />
    </>
  ),
}

const MUST_NOT: Readonly<Record<string, ReactElement>> = {
  P001: <></>,
  P003: (
    <path d="M47.5 54h5v24h-5zM50 24c2 7 8 10 8 18 0 6-3 10-8 10s-8-4-8-10c0-4 2-6 3-9 1 2 2 3 3 4 1-4 0-8 2-13z" />
  ),
  P009: (
    <>
      <path d="M62 24h5v56h-5zM44 70h18v5H44zM44 56h18v5H44zM48 42h14v5H48z" />
      {head(40, 32, 5.5)}
      <path {...limb} d="M41 42l1 14M43 44l15-4M42 56l10 1v10M41 56l-5 10v10" />
    </>
  ),
  P010: (
    <path d="M41 78c-2-8-9-13-13-20-2-4 3-7 6-4l6 6V34a3.5 3.5 0 0 1 7 0v-5a3.5 3.5 0 0 1 7 0v4a3.5 3.5 0 0 1 7 0v6a3.5 3.5 0 0 1 7 0v22c0 8-3 12-5 17z" />
  ),
  P012: (
    <>
      <path d="M34 46h32l7 30H27z" />
      <path {...limb} strokeWidth={5} d="M42 45v-4a8 8 0 0 1 16 0v4" />
    </>
  ),
  P019: (
    <>
      <path d="M42 26h12v26l14 7c4 2 6 4 6 9H42z" />
      <path d="M26 72h48v5H26z" />
    </>
  ),
  P031: (
    <>
      <path d="M36 30h22v40H36z" fill="none" stroke="currentColor" strokeWidth="4" />
      <path d="M44 36h6v16h-6z" />
      <path d="M48 62l-4-8c-2-4 3-6 5-3l4 6 14 3c4 1 6 4 6 8v10H58z" />
    </>
  ),
}

const RESCUE: Readonly<Record<string, ReactElement>> = {
  E003: <path d="M41 24h18v17h17v18H59v17H41V59H24V41h17z" />,
  F001: (
    <>
      <path d="M40 42c0-5 4-8 9-8s9 3 9 8v38H40zM46 24h6v9h-6z" />
      <path {...limb} strokeWidth={4} d="M50 27h12M46 29c-10 2-14 10-14 24" />
    </>
  ),
}

export const PICTURES: Readonly<Record<string, ReactElement>> = {
  ...WARNINGS,
  ...MUST_DO,
  ...MUST_NOT,
  ...RESCUE,
}

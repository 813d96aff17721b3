export const MANIFEST = 'app.webmanifest'

/** The ground of the page, `--plaster` of the styles. */
const PLASTER = '#e9e2d5'

/** What a device asks before it installs the app; `icon` gives the built address of a picture in `assets`. */
export function webManifest(icon: (name: string) => string) {
  const picture = (name: string, sizes: string, type: string) => ({ src: icon(name), sizes, type })
  const large = picture('icon-512.png', '512x512', 'image/png')
  return {
    name: 'Dry Run',
    short_name: 'Dry Run',
    description: 'Rehearse fitting a kitchen before the first hole.',
    lang: 'en-GB',
    // From the folder the app is in, wherever that is.
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: PLASTER,
    theme_color: PLASTER,
    icons: [
      picture('icon.svg', 'any', 'image/svg+xml'),
      picture('icon-192.png', '192x192', 'image/png'),
      large,
      // The drawing keeps clear of the corners a device may cut off.
      { ...large, purpose: 'maskable' },
    ],
  }
}

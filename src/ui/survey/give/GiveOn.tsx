import { useEffect, useId, useRef, useState } from 'react'
import { linkOf } from '../../../state/link'
import { useApp } from '../../app-context'
import { useSaveKitchen } from '../../use-save-kitchen'
import { type Matrix, MOST_LETTERS, matrixOf } from './matrix'

interface Given {
  readonly kitchen: unknown
  readonly address: string
  /** Undefined: too large for a code. */
  readonly matrix: Matrix | undefined
}

/** Programs for messages have been seen to cut longer ones; nothing published says where. */
const LONG_LINK = 2000

/** The open kitchen given on: as a link or a matrix code that carries all of it, or as a file. */
export function GiveOn() {
  const kitchen = useApp((s) => s.kitchen)
  const isBehind = useApp((s) => s.isBehind)
  const given = useGiven(isBehind ? null : kitchen)
  if (kitchen === null) return null
  return (
    <section className="sheet give-on">
      <h2>Give it on</h2>
      {isBehind && (
        <p>Something in this kitchen does not go together yet. Mend it first: nobody could open the link.</p>
      )}
      {given === 'cannot' && (
        <>
          <p>This browser cannot make a link.</p>
          <TheFile />
        </>
      )}
      {given !== null && given !== 'cannot' && <Ways given={given} />}
    </section>
  )
}

/** The link of what is open and its code, made anew when it changes. */
function useGiven(kitchen: unknown): Given | 'cannot' | null {
  const [given, setGiven] = useState<Given | 'cannot' | null>(null)
  useEffect(() => {
    let isWanted = kitchen !== null
    const make = async () => {
      try {
        const address = `${window.location.href.split('#')[0]}#${await linkOf(kitchen)}`
        const matrix = await matrixOf(address)
        if (isWanted) setGiven({ kitchen, address, matrix })
      } catch {
        if (isWanted) setGiven('cannot')
      }
    }
    if (isWanted) void make()
    return () => {
      isWanted = false
    }
  }, [kitchen])
  return given === 'cannot' || given?.kitchen === kitchen ? given : null
}

function Ways({ given: { address, matrix } }: { readonly given: Given }) {
  return (
    <>
      <p>
        The link carries the whole kitchen within itself. It is stored nowhere else, and what was written down
        on the day is not in it.
      </p>
      <CopyLink address={address} />
      {matrix === undefined ? (
        <>
          <p>
            This kitchen is too large for a matrix code: its link has {address.length} letters. With more than{' '}
            {MOST_LETTERS} the dots become too small for the camera of a phone. Give the file instead.
          </p>
          <TheFile />
        </>
      ) : (
        <figure className="matrix">
          <MatrixCode matrix={matrix} />
          <figcaption className="quiet">Or point the camera of another device at this.</figcaption>
        </figure>
      )}
    </>
  )
}

/** Of the screen's own dots: a dot of the code, and a small code. */
const LEAST_DOT = 3
const LEAST_WIDTH = 260

function MatrixCode({ matrix: { size, path } }: { readonly matrix: Matrix }) {
  return (
    <svg
      viewBox={`0 0 ${size} ${size}`}
      width={size * Math.max(LEAST_DOT, Math.floor(LEAST_WIDTH / size))}
      role="img"
      aria-label="Matrix code with the link to this kitchen"
    >
      <rect width={size} height={size} />
      <path d={path} />
    </svg>
  )
}

function CopyLink({ address }: { readonly address: string }) {
  const id = useId()
  const field = useRef<HTMLInputElement>(null)
  const [said, setSaid] = useState('')
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(address)
      setSaid(
        address.length > LONG_LINK
          ? 'Copied. It is long: if it does not arrive whole, give the file instead.'
          : 'Copied.',
      )
    } catch {
      field.current?.focus()
      field.current?.select()
      setSaid('This browser does not copy by itself: the link is marked, copy it by hand.')
    }
  }
  return (
    <div className="copy-link">
      <label htmlFor={id} className="visually-hidden">
        Link to this kitchen
      </label>
      <input id={id} ref={field} className="figure" readOnly value={address} />
      <button type="button" className="button" onClick={copy}>
        Copy the link
      </button>
      <p role="status">{said}</p>
    </div>
  )
}

function TheFile() {
  const save = useSaveKitchen()
  return (
    <button type="button" className="button" onClick={save}>
      Save the file
    </button>
  )
}

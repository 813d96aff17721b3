import { useEffect, useMemo, useRef, useState } from 'react'
import { sheetBlocks, sheetHead } from '../../../core/form/sheet/blocks'
import { BlockOnPaper } from './BlockOnPaper'
import { type Height, type Piece, pagesOf } from './pages'
import { placed } from './placed'
import './survey-sheet.css'

interface Props {
  /** A kitchen file whose facts are filled in; null: blank. */
  readonly file: unknown
}

/** Height of a page between its head and its foot: what both A4 and US Letter have, in mm. */
const ROOM = 256
const PX_PER_MM = 96 / 25.4

/** The sheet, page by page. What goes on a page is measured where it is drawn, so that no line is ever cut. */
export function SurveySheet({ file }: Props) {
  const blocks = useMemo(() => sheetBlocks(file), [file])
  const [pages, setPages] = useState<readonly (readonly Piece[])[] | null>(null)
  const measured = useRef<HTMLDivElement>(null)
  useEffect(() => {
    let isShown = true
    const layOut = () => {
      const root = measured.current
      if (!isShown || root === null) return
      setPages(pagesOf([...root.children].map(heightOf), ROOM * PX_PER_MM))
    }
    // Letters that are still to come are of another width; they are fetched once there is something to set in them.
    measured.current?.getBoundingClientRect()
    if ('fonts' in document) document.fonts.ready.then(layOut).catch(layOut)
    else layOut()
    return () => {
      isShown = false
    }
  }, [])
  if (pages === null) {
    return (
      <div className="survey-paper measured" ref={measured} aria-hidden="true">
        {placed(blocks).map(({ item, place }) => (
          <BlockOnPaper key={place} block={item} />
        ))}
      </div>
    )
  }
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable with the keyboard
    <section className="survey-pages scroll" aria-label="The sheet" tabIndex={0}>
      {pages.map((pieces, i) => (
        <div className="survey-paper" key={pieces[0]?.block}>
          <PageHead file={file} number={i + 1} of={pages.length} />
          {pieces.map(({ block, from, to }) => {
            const shown = blocks[block]
            return shown === undefined ? null : <BlockOnPaper key={block} block={shown} from={from} to={to} />
          })}
        </div>
      ))}
    </section>
  )
}

function heightOf(element: Element): Height {
  const all = element.getBoundingClientRect().height
  const rows = [...element.querySelectorAll('[data-row]')].map((row) => row.getBoundingClientRect().height)
  const foot = element.querySelector('[data-foot]')?.getBoundingClientRect().height ?? 0
  return { head: all - foot - rows.reduce((sum, row) => sum + row, 0), rows, foot }
}

function PageHead({ file, number, of }: Props & { readonly number: number; readonly of: number }) {
  return (
    <header>
      <strong>
        Sheet {number} of {of}
      </strong>
      {sheetHead(file).map(({ number, label, text }) => (
        <span key={number} className="write-on">
          <span className="no">{number}</span> <span className="said">{text === '' ? label : text}</span>
        </span>
      ))}
    </header>
  )
}

import type { Block } from '../../../core/form/sheet/blocks'
import { AcrossOnPaper } from './AcrossOnPaper'
import { Elevations } from './Elevations'
import { GridOnPaper } from './GridOnPaper'
import { HowToRead } from './HowToRead'
import { LinesOnPaper } from './LinesOnPaper'
import { MayBe } from './MayBe'
import { TableOnPaper } from './TableOnPaper'

interface Props {
  readonly block: Block
  /** Rows of it that stand on this page; all, where nothing is said. */
  readonly from?: number
  readonly to?: number
}

/** One block of the sheet, or the rows of it that go on one page, with the title of its page of the survey. */
export function BlockOnPaper({ block, from = 0, to }: Props) {
  const { page } = block
  return (
    <div className="on-page" data-block={block.kind}>
      {page !== undefined && from === 0 && (
        <>
          {page.number === '1' && <HowToRead />}
          <h3>
            <span className="no">{page.number}</span> {page.title} <small>{page.how}</small>
          </h3>
        </>
      )}
      <Shown block={block} from={from} to={to} />
    </div>
  )
}

function Shown({
  block,
  from,
  to,
}: {
  readonly block: Block
  readonly from: number
  readonly to: number | undefined
}) {
  switch (block.kind) {
    case 'lines':
      return <LinesOnPaper rows={block.rows.slice(from, to)} />
    case 'table':
      return <TableOnPaper table={block} from={from} to={to} />
    case 'across':
      return <AcrossOnPaper walls={block} from={from} to={to} />
    case 'pair':
      return (
        <div className="table-pair">
          {block.tables.map((table) => (
            <TableOnPaper key={table.number} table={table} isWhole />
          ))}
        </div>
      )
    case 'elevations':
      return <Elevations marks={block.marks} />
    case 'grid':
      return <GridOnPaper grid={block} />
    case 'may-be':
      return <MayBe rest={block} />
  }
}

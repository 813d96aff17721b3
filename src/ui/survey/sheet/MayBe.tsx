import { Fragment } from 'react'
import type { Rest } from '../../../core/form/sheet/blocks'
import { upperFirst } from '../../../core/words/upper-first'

/** So much that may be asked, and there is a line to write some of it on. */
const WORTH_A_LINE = 5

/** What may be asked beside that, by number and name, and a line to write some of it on. */
export function MayBe({ rest: { groups, ownSheets } }: { readonly rest: Rest }) {
  const isMuch = groups.reduce((sum, { items }) => sum + items.length, 0) >= WORTH_A_LINE
  return (
    <div className="may-be">
      {groups.length > 0 && (
        <p>
          <strong>If there is any:</strong>{' '}
          {groups.map(({ of, items }) => (
            <Fragment key={of}>
              {of !== '' && <em>{upperFirst(of)}: </em>}
              {items.map(([number, label]) => (
                <span key={number} className="item">
                  <span className="no">{number}</span> {label}.{' '}
                </span>
              ))}
            </Fragment>
          ))}
        </p>
      )}
      {ownSheets.map(([number, what]) => (
        <p key={number}>
          <span className="no">{number}</span> {what}: what is not asked here is typed from the sheet or
          packet that came with each.
        </p>
      ))}
      {isMuch && (
        <p className="further">
          <span className="write-on">No.</span>
          <span className="write-on" />
          <span className="write-on">No.</span>
          <span className="write-on" />
        </p>
      )}
    </div>
  )
}

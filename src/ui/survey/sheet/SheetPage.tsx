import { useState } from 'react'
import { useApp } from '../../app-context'
import { usePageHeading } from '../../use-page-heading'
import { SurveySheet } from './SurveySheet'

/** The sheet one takes into the room, with tape, pencil and level: as it will be printed, blank or with what is typed. */
export function SheetPage() {
  const kitchen = useApp((s) => s.kitchen)
  const heading = usePageHeading()
  const [isBlank, setBlank] = useState(true)
  const file = isBlank ? null : kitchen
  return (
    <div className="to-print">
      <section className="sheet no-print">
        <h2 ref={heading} tabIndex={-1}>
          Survey sheet to print
        </h2>
        <p>
          Take it into the room with tape, pencil and level. Its numbers are those beside the fields on the
          screen. It prints on A4 or US Letter, upright.
        </p>
        <div className="choices">
          {kitchen !== null && (
            <>
              <button type="button" className="button" aria-pressed={isBlank} onClick={() => setBlank(true)}>
                Blank
              </button>
              <button
                type="button"
                className="button"
                aria-pressed={!isBlank}
                onClick={() => setBlank(false)}
              >
                With what is typed
              </button>
            </>
          )}
          <button type="button" className="button main" onClick={() => window.print()}>
            {isBlank ? 'Print a blank survey sheet' : 'Print it with what is typed'}
          </button>
        </div>
      </section>
      <SurveySheet key={String(isBlank)} file={file} />
    </div>
  )
}

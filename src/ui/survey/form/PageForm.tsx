import type { Page } from '../../../core/form/field'
import { PAGES } from '../../../core/form/pages'
import { usePageHeading } from '../../use-page-heading'
import { HeightsPicture } from '../heights/HeightsPicture'
import { WallStrip } from '../strip/WallStrip'
import { FieldNumber } from './FieldNumber'
import { Fields } from './FieldOf'
import { openHelp } from './help'
import { SoFar } from './SoFar'

/** One page of the survey to type into, with what has come of it so far beside it. */
export function PageForm({ page }: { readonly page: Page }) {
  const next = PAGES[PAGES.indexOf(page) + 1]
  const heading = usePageHeading()
  return (
    <div className="two page-form">
      {/* biome-ignore lint/a11y/noStaticElementInteractions: it follows the keyboard and the finger to the fields, and takes none itself */}
      <section className="sheet" onFocus={openHelp}>
        <h2 ref={heading} tabIndex={-1}>
          <FieldNumber number={page.number} />
          {page.title}
        </h2>
        <p>{page.how}</p>
        <p className="quiet">
          Leave open what you do not know yet; what is assumed meanwhile says so. Figures as they are read:
          2400, 2.4 m, 34 1/2 in, 900 ± 1.
        </p>
        {(page.id === 'walls' || page.id === 'units') && <WallStrip of={page.id} />}
        {page.id === 'wishes' && <HeightsPicture />}
        <Fields fields={page.fields} under="" />
        <p className="onward">
          <a className="button main" href={next === undefined ? '#survey' : `#survey/${next.id}`}>
            {next === undefined ? 'To what was found' : `On to: ${next.title}`}
          </a>
        </p>
      </section>
      <SoFar />
    </div>
  )
}

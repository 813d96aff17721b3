import { useActions, useApp } from '../app-context'
import { OpenFile } from '../OpenFile'
import { useSaveKitchen } from '../use-save-kitchen'
import type { DemoKitchen } from './SurveyPlace'
import { useBegin } from './use-begin'

/** Kitchen files in and out, an empty one to begin with, and those invented for practice. */
export function Files({ demos }: { readonly demos: readonly DemoKitchen[] }) {
  const actions = useActions()
  const isOpen = useApp((s) => s.kitchen !== null)
  const save = useSaveKitchen()
  const begin = useBegin()
  return (
    <section className="sheet files">
      <h2 id="kitchen-files" tabIndex={-1}>
        Kitchen files
      </h2>
      <div className="choices">
        <button type="button" className="button" onClick={begin}>
          Begin your own kitchen
        </button>
        <OpenFile label="Open a kitchen file" onText={(text) => actions.open(text)} />
        {isOpen && (
          <button type="button" className="button" onClick={save}>
            Save this kitchen file
          </button>
        )}
      </div>
      <p className="open-note">
        Kitchen files end in .dryrun.json. What you open stays on this device. Or open one that was invented
        for practice:
      </p>
      <ul className="demos">
        {demos.map((demo) => (
          <li key={demo.name}>
            <button type="button" className="link" onClick={async () => actions.open(await demo.text())}>
              {demo.name}
            </button>
            <span className="quiet">{demo.about}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}

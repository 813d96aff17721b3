import { placed } from './placed'

/** A box for each wall to sketch it in, with the line across it. */
export function Elevations({ marks }: { readonly marks: readonly string[] }) {
  return (
    <div className="elevations">
      {placed(marks).map(({ item, place }) => (
        <figure key={place}>
          <figcaption>
            <strong>Wall</strong> <span className="write-on figure">{item}</span> seen from inside: sketch
            what is on it
          </figcaption>
          <div className="elevation">
            <span className="the-line">the line</span>
            <span className="end">left end</span>
            <span className="end right">right end</span>
          </div>
        </figure>
      ))}
    </div>
  )
}

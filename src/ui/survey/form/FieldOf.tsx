import { type ReactNode, useId } from 'react'
import type { Field, Span } from '../../../core/form/field'
import { hasMiddle } from '../../../core/form/span'
import { askedOf, thingAt } from '../../../core/form/things'
import { useApp } from '../../app-context'
import { ChoiceInput, RefInput, RefsInput, Ticks, YesNoInput } from './Choices'
import { FieldNumber } from './FieldNumber'
import { AlongInput, HeightInput, OrderInput, PlaceInput } from './Positions'
import { SpanRows } from './SpanRows'
import { ThingList } from './ThingList'
import { TypedInput } from './TypedInput'
import { useWords } from './use-fact'

/** One field of a page or of a listed thing, with its label and how it is found out. */
export function FieldOf({ field, under }: { readonly field: Field; readonly under: string }) {
  const id = useId()
  const path = under === '' ? field.key : `${under}.${field.key}`
  if (field.kind === 'list') return <ThingList things={field.things} path={path} number={field.number} />
  if (field.span !== undefined) return <Spanned field={field} span={field.span} under={under} />
  return <OneField id={id} field={field} path={path} />
}

/** An edge and how far it is to the other; of what is measured at its middle, that comes first. */
function Spanned({
  field,
  span,
  under,
}: {
  readonly field: Field
  readonly span: Span
  readonly under: string
}) {
  const id = useId()
  const isFromMiddle = useApp(({ kitchen }) => hasMiddle(span, thingAt(kitchen, under)))
  const edge = <OneField id={id} field={field} path={`${under}.${field.key}`} />
  const rows = <SpanRows key={under} field={field} span={span} under={under} hasMiddle={isFromMiddle} />
  return isFromMiddle ? (
    <>
      {rows}
      {edge}
    </>
  ) : (
    <>
      {edge}
      {rows}
    </>
  )
}

function OneField({
  id,
  field,
  path,
}: {
  readonly id: string
  readonly field: Field
  readonly path: string
}) {
  const how = field.how === undefined ? undefined : `${id}-how`
  return (
    <div className="field" data-kind={field.kind}>
      <label htmlFor={id}>
        <FieldNumber number={field.number} />
        {field.label}
      </label>
      {inputOf(field, id, path, how)}
      {field.how !== undefined && (
        <p className="how" id={how}>
          {field.how}
        </p>
      )}
    </div>
  )
}

function inputOf(field: Field, id: string, path: string, describedBy: string | undefined): ReactNode {
  const own = { id, path, ...(describedBy === undefined ? {} : { describedBy }) }
  switch (field.kind) {
    case 'length':
    case 'text':
      return <TypedInput {...own} sort={field.kind} />
    case 'number':
      return <TypedInput {...own} sort="number" unit={field.unit} />
    case 'yes-no':
      return <YesNoInput {...own} />
    case 'choice':
      return <ChoiceInput {...own} options={field.options} always={field.always === true} />
    case 'choices':
      return <Ticks {...own} label={field.label} options={field.options} />
    case 'ref':
      return <RefInput {...own} to={field.to} />
    case 'refs':
      return <RefsInput {...own} label={field.label} to={field.to} />
    case 'along':
      return <AlongInput {...own} label={field.label} />
    case 'height':
      return <HeightInput {...own} label={field.label} />
    case 'place':
      return <PlaceInput {...own} label={field.label} />
    case 'order':
      return <OrderInput {...own} label={field.label} />
    case 'list':
      return null
  }
}

/** Fields one under the other; those seldom asked are folded away. */
export function Fields({ fields, under }: { readonly fields: readonly Field[]; readonly under: string }) {
  const keys = useWords(({ kitchen }) =>
    askedOf(fields, under === '' ? kitchen : thingAt(kitchen, under)).map(({ key }) => key),
  )
  const asked = fields.filter(({ key }) => keys.includes(key))
  const often = asked.filter((field) => field.more !== true)
  const seldom = asked.filter((field) => field.more === true)
  return (
    <>
      <div className="fields">
        {often.map((field) => (
          <FieldOf key={field.key} field={field} under={under} />
        ))}
      </div>
      {seldom.length > 0 && (
        <details className="seldom">
          <summary>More that may be asked</summary>
          <div className="fields">
            {seldom.map((field) => (
              <FieldOf key={field.key} field={field} under={under} />
            ))}
          </div>
        </details>
      )}
    </>
  )
}

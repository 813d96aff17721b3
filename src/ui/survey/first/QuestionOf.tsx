import { useId, useState } from 'react'
import { ANSWERS, isLineOfUnits, type Question, readAnswer } from '../../../core/first/questions'
import type { Option } from '../../../core/form/field'
import { isUnread } from '../../../core/form/typed'
import { walls } from '../../../core/form/walls'
import { useActions, useApp } from '../../app-context'
import { words } from '../../words'
import { Select } from '../form/Choices'
import { useLengthUnit } from '../form/use-fact'

const ofWall = (key: string): readonly Option[] => {
  const field = walls.kind === 'list' ? walls.things.fields.find((f) => f.key === key) : undefined
  return field?.kind === 'choice' ? field.options : []
}

type Way =
  /** Tapped, all of them in sight. */
  | { readonly of: Question; readonly tap: readonly Option[] }
  /** One of many words. */
  | { readonly of: Question; readonly words: readonly Option[]; readonly label: string }
  | { readonly of: Question; readonly unit: 'length' | 'year' | 'line' }

export interface Asked {
  readonly label: string
  readonly how?: string
  readonly ways: readonly Way[]
}

const YES_NO: readonly Option[] = [
  ['yes', 'Yes'],
  ['no', 'No'],
]

/** The ten, in the order they are asked. */
export const QUESTIONS: readonly Asked[] = [
  {
    label: 'Which country is the kitchen in?',
    ways: [
      {
        of: 'region',
        tap: [
          ['uk', 'United Kingdom'],
          ['north-america', 'North America'],
          ['continental', 'Continental Europe'],
        ],
      },
    ],
  },
  {
    label: 'What is the smallest width where the units will stand?',
    how: 'Along one wall, between what stands at its two ends. Measure in several places; the smallest counts.',
    ways: [{ of: 'width', unit: 'length' }],
  },
  {
    label: 'Which widths stand along that wall, from left to right?',
    how: 'Such as 600 600 1000. Write t after a tall unit, s after a space for an appliance: 600t 600 600s.',
    ways: [{ of: 'units', unit: 'line' }],
  },
  {
    label: 'What is that wall made of?',
    how: 'Knock at a dozen places. Look at a doorway. Do not drill to find out.',
    ways: [
      { of: 'knock', tap: ofWall('knock') },
      { of: 'construction', words: ofWall('construction'), label: 'And if you can tell, made of' },
    ],
  },
  { label: 'In which year was the house built?', ways: [{ of: 'year', unit: 'year' }] },
  { label: 'Is there gas in the house?', ways: [{ of: 'gas', tap: YES_NO }] },
  {
    label: 'Who is there to lift?',
    ways: [
      {
        of: 'people',
        tap: [
          ['1', 'I am alone'],
          ['2', 'One helper and I'],
          ['3', 'Two helpers and I'],
        ],
      },
    ],
  },
  {
    label: 'If a tall unit stands along that wall: how tall is it? And how low is the ceiling?',
    how: 'Tall: higher than the worktop by far, such as for a larder or an oven. By itself, without its legs; no tall unit: leave it open. The ceiling above the floor, at its lowest place.',
    ways: [
      { of: 'tall', unit: 'length' },
      { of: 'ceiling', unit: 'length' },
    ],
  },
  {
    label: 'How low can the dishwasher be?',
    how: 'Its own sheet says it: height with its feet wound in.',
    ways: [{ of: 'dishwasher', unit: 'length' }],
  },
  {
    label: 'How far does the floor fall where units will stand?',
    how: 'From its highest to its lowest place, with a long level.',
    ways: [{ of: 'fall', unit: 'length' }],
  },
]

const SHORT: Partial<Record<Question, string>> = { tall: 'Tall unit', ceiling: 'Lowest ceiling' }

/** One question with its answer, and always with that it is not known yet. */
export function QuestionOf({ label, how, ways }: Asked) {
  const id = useId()
  return (
    <li className="first-question">
      <p id={id} className="asked">
        {label}
      </p>
      {how !== undefined && <p className="quiet">{how}</p>}
      {ways.map((way) => (
        <WayOf key={way.of} way={way} labelledBy={id} label={SHORT[way.of] ?? label} />
      ))}
    </li>
  )
}

interface WayProps {
  readonly way: Way
  readonly label: string
  readonly labelledBy: string
}

function WayOf({ way, label, labelledBy }: WayProps) {
  if ('tap' in way) return <Taps of={way.of} options={way.tap} labelledBy={labelledBy} />
  if ('words' in way) return <Words {...way} />
  return (
    <TypedLine key={way.of} of={way.of} label={label} unit={way.unit} isNamed={SHORT[way.of] !== undefined} />
  )
}

function useAnswer(of: Question) {
  const actions = useActions()
  const kitchen = useApp((s) => s.kitchen)
  const first = useApp((s) => s.first)
  return {
    measured: first.find(({ say }) => say.key === `first.measured.${of}`)?.say,
    kitchen,
    shown: ANSWERS[of].shown(kitchen),
    answer: (value: unknown) => {
      const edits = ANSWERS[of].edits(kitchen, value)
      if (edits.length > 0) actions.edit(edits)
    },
  }
}

const NOT_KNOWN = 'I don’t know yet'
const said = (of: Question, word: string): unknown => (of === 'gas' ? word === 'yes' : word)

function Taps({
  of,
  options,
  labelledBy,
}: {
  readonly of: Question
  readonly options: readonly Option[]
  readonly labelledBy: string
}) {
  const { shown, answer } = useAnswer(of)
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would say the question a second time
    <div className="taps" role="group" aria-labelledby={labelledBy} data-question={of}>
      {options.map(([word, words]) => (
        <button
          key={word}
          type="button"
          className="button"
          aria-pressed={shown === word}
          onClick={() => answer(said(of, word))}
        >
          {words}
        </button>
      ))}
      <NotKnown isOpen={shown === ''} onTap={() => answer(null)} />
    </div>
  )
}

function NotKnown({ isOpen, onTap }: { readonly isOpen: boolean; readonly onTap: () => void }) {
  return (
    <button type="button" className="button not-known" aria-pressed={isOpen} onClick={onTap}>
      {NOT_KNOWN}
    </button>
  )
}

function Words({
  of,
  words,
  label,
}: {
  readonly of: Question
  readonly words: readonly Option[]
  readonly label: string
}) {
  const id = useId()
  const { shown, answer } = useAnswer(of)
  return (
    <div className="taps" data-question={of}>
      <label htmlFor={id}>{label}</label>
      <Select
        id={id}
        path={of}
        options={[['', NOT_KNOWN], ...words]}
        value={shown}
        onChoose={(word) => answer(word === '' ? null : word)}
      />
    </div>
  )
}

/** A line to type: kept as one edit when it is left or with Enter; half typed it waits. */
function TypedLine({
  of,
  label,
  unit,
  isNamed,
}: {
  readonly of: Question
  readonly label: string
  readonly unit: 'length' | 'year' | 'line'
  readonly isNamed: boolean
}) {
  const id = useId()
  const lengths = useLengthUnit()
  const { kitchen, shown, answer, measured } = useAnswer(of)
  const isMeasured = measured !== undefined && shown === ''
  const [draft, setDraft] = useState<string | null>(null)
  const [why, setWhy] = useState<string | null>(null)
  if (of === 'units' && !isLineOfUnits(kitchen)) {
    return (
      <p>
        These units are placed one by one. <a href="#survey/units">Change them with the units.</a>
      </p>
    )
  }
  const keep = () => {
    if (draft === null) return
    const read = readAnswer(of, draft, lengths)
    if (isUnread(read)) return setWhy(read.why)
    setWhy(null)
    setDraft(null)
    if (draft.trim() !== shown) answer(read)
  }
  return (
    <div className="taps" data-question={of}>
      {isNamed && <label htmlFor={id}>{label}</label>}
      <span className="typed" data-sort={unit === 'line' ? 'line' : undefined}>
        <input
          id={id}
          type="text"
          inputMode={unit === 'year' ? 'numeric' : 'text'}
          autoComplete="off"
          spellCheck={false}
          aria-label={isNamed ? undefined : label}
          aria-invalid={why === null ? undefined : true}
          aria-describedby={why === null ? undefined : `${id}-wrong`}
          value={draft ?? shown}
          onChange={({ target }) => setDraft(target.value)}
          onBlur={keep}
          onKeyDown={({ key }) => {
            if (key === 'Enter') keep()
            if (key === 'Escape') setDraft(null)
          }}
        />
        {unit !== 'year' && <span className="unit">{lengths === 'inch' ? 'in' : 'mm'}</span>}
      </span>
      <NotKnown
        isOpen={shown === '' && draft === null && !isMeasured}
        onTap={() => {
          setDraft(null)
          setWhy(null)
          answer(null)
        }}
      />
      {isMeasured && <span className="measured">{words(measured)}</span>}
      {why !== null && (
        <span className="wrong" id={`${id}-wrong`}>
          {why}
        </span>
      )}
    </div>
  )
}

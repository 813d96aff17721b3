/** Words about the survey and where units stand. */
export const surveyWords = {
  'survey.outline-does-not-close':
    'Walked all the way round, the walls miss where they began by {miss:pm}. Up to {allowed} mm, and the precision of the lengths, is usual.',
  'survey.outline-does-not-close.ask': 'Measure the walls and corners again; look first at the corners.',
  'survey.floor-step':
    'The floor falls {fall} between readings {a} and {b}, {apart} mm apart: there may be a step.',
  'survey.floor-step.ask': 'Take more readings between {a} and {b}.',
  'survey.read-twice':
    'Readings {a} and {b} are of one place and differ by {fall}. The floor is taken from {a}.',
  'survey.read-twice.ask': 'Read the floor there again, and keep one of the two.',
  'units.unit-past-end': '{unit} runs {by:pm} past the {end} end of its wall.',
  'units.unit-past-end.marginal':
    '{unit} may run past the {end} end of its wall, by {by:pm}: that is within the precision of the tape.',
} as const

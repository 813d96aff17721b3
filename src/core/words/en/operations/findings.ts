/** Words of the work: findings about the work. */
export const findingsWords = {
  'finding.asbestos-age':
    'This house was built in {year}. Homes built before {limit} may hold asbestos: stop before strip-out and before the first hole.',
  'finding.asbestos-age.year-not-known':
    'When this house was built is not known. Homes built before {limit} may hold asbestos: stop before strip-out and before the first hole.',
  'finding.asbestos-age.ask': 'Have a competent firm take a sample.',
  'finding.isolate-first.no-gas':
    'Before any drilling: electricity and water off, and proved so. A plug-in tester proves nothing about a buried cable.',
  'finding.isolate-first':
    'Before any drilling: electricity, water and gas off, and proved so. A plug-in tester proves nothing about a buried cable.',
  'finding.isolate-first.ask': 'Ask someone competent, with the right instrument.',
  'finding.unit-tips':
    'The weight of {unit} does not lie over its feet, as they are entered: left standing on them it tips.',
  'finding.unit-tips.ask': 'Look under it: is a foot left out, or entered in the wrong place?',
  'finding.gas-trade': 'Gas: {appliances} is for a registered gas engineer only. Book them early.',
  'finding.gas-trade.ask': 'Book a registered gas engineer.',
}

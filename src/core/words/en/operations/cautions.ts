/** Words of the work: what to beware of. */
export const cautionsWords = {
  'caution.boxes': 'Heavy boxes. Wear safety shoes, and lift what is too much for one by two.',
  'caution.straps': 'Straps and blades cut. Cut away from you.',
  'caution.disconnect': 'Switch off and shut off before you begin.',
  'caution.not-proved-dead': 'Switched off is not dead. It is dead when somebody competent has proved it.',
  'caution.leave-it-off': 'Once off, leave it off until the work is done.',
  'caution.live-again':
    'From here on the walls are live: drill no more holes. If one is still needed, make all of it off again first.',
  'caution.asbestos': 'Do not touch, drill, scrape or break what may hold asbestos.',
  'caution.asbestos-dust':
    'Asbestos dust cannot be seen. If something broke, leave the room and shut the door.',
  'caution.gas-fittings': 'Touch no gas pipe, valve or cap.',
  'caution.smell-of-gas':
    'If you smell gas: no flame, no switch, open the windows, get out and call the gas emergency line.',
  'caution.bands-are-not-cables': 'Bands show where cables should be. Cables may lie elsewhere.',
  'caution.never-drill-to-find-out': 'Never drill to find out what a wall is made of.',
  'caution.heated-floor': 'Heating may lie in the floor. Drill no hole in it.',
  'caution.drill-cable':
    'A cable or pipe may lie where nothing shows it. Stop if the bit meets anything odd.',
  'caution.eyes': 'Wear eye protection.',
  'caution.no-gloves-at-drill': 'No gloves, sleeves or loose hair at the drill.',
  'caution.silica-dust': 'Masonry dust harms the lungs. Wear a respirator and hold a vacuum at the hole.',
  'caution.dust': 'Wear a mask and hold a vacuum at the hole.',
  'caution.hammer-noise': 'Wear ear protection, and rest your hands from the hammer.',
  'caution.stepladder': 'Use a stepladder, never a stool or chair.',
  'caution.phone-off-the-steps': 'Read the telephone off the steps, not on them.',
  'caution.falling-unit': 'Nobody stands under it. Until it is secured it can fall.',
  'caution.hands-behind-unit': 'Keep fingers out from behind it.',
  'caution.panels': 'Mind fingers between panels.',
  'caution.lying-unit': 'It lies in the way. Keep the path to the door free.',
  'caution.tall-tips': 'It tips until it is restrained. Do not let go, open nothing, put nothing in.',
  'caution.tips-on-feet': 'Its weight is not over its feet. It tips if you let go.',
  'caution.feet': 'Wear safety shoes.',
  'caution.under-the-edge': 'Keep hands and feet out from under the edge it turns on.',
  'caution.blades': 'Mind sharp edges and blades.',
  'caution.stop-here': 'Work stops here until every check is answered.',
  'caution.stone-dust': 'Cut no stone dry. Water on the blade, and a respirator.',
  'caution.worktop-dust': 'Wear a respirator, and fit a vacuum to the tool.',
  'caution.router-noise': 'Wear ear protection.',
  'caution.no-gloves-at-router': 'No gloves or loose sleeves at the router and saw.',
  'caution.worktop-fingers': 'Set it down on bearers, not on fingers.',
  'caution.circuit-by-electrician': 'Fixed wiring is for a competent electrician. Alter no circuit.',
  'caution.wet-floor': 'Wipe up water at once.',
  'caution.appliance-sheet': 'Read its own sheet first. It comes before anything usual said here.',
  'caution.flap-springs': 'Sprung flaps snap. Keep fingers out of the arms.',
  'caution.not-held.drawers':
    '{unit} is not held to {wall} yet: put nothing in its drawers, and open one at a time. No place for its screws has been found: full drawers, drawn out, can pull it over.',
  'caution.not-held.joined.drawers':
    '{unit} is not held to {wall} yet, only to {others}: put nothing in its drawers, and open one at a time. No place for its screws has been found: full drawers, drawn out, can pull it forward.',
  'caution.not-held.doors':
    '{unit} is not held to {wall} yet: put nothing in it, and open one door at a time. No place for its screws has been found: its open doors can pull it over.',
  'caution.not-held.joined.doors':
    '{unit} is not held to {wall} yet, only to {others}: put nothing in it, and open one door at a time. No place for its screws has been found: its open doors can pull it forward.',
  'caution.not-held.hung':
    '{unit} is not secured to {wall} yet: hang nothing on it and put nothing in it. No place for its last screws has been found.',
  'caution.not-held.under':
    '{unit} is not held to {wall} yet. No place for its screws has been found: settle that before this is laid over it.',
  'caution.helper-windows':
    'This takes {people} people. {helper} is there only at set times: {windows}. Wait for them.',
  'caution.helper-not-always': 'This takes {people} people. {helper} is not always there. Wait for them.',
}

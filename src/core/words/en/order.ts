/** Why one thing comes before another: one short sentence for each reason, with this room's figures. */
export const orderWords = {
  'because.delivery-before-assembly': '{unit}, {width} wide, is counted before it is opened.',
  'because.delivery-before-assembly.unknown': '{unit} is counted before it is opened.',
  'because.isolate-before-hole':
    'Holes for {what} ({count}) go up to {depth} deep: everything is off and proved off first.',
  'because.isolate-before-hole.unknown':
    'How deep the holes for {what} ({count}) go is not known yet: everything is off and proved off first.',
  'because.isolate-before-hole.no-hole-yet': '{what} is drilled for: everything is off and proved off first.',
  'because.asbestos-before-hole':
    'Built in {year}, before {limit}: no hole for {what} before a sample has been tested.',
  'because.asbestos-before-hole.year-not-known':
    'When the house was built is not known ({limit} counts): no hole for {what} before a sample has been tested.',
  'because.trace-before-hole':
    'Holes up to {depth} deep in {wall}, the first at {along}, {height:signed} from the line: traced before drilled.',
  'because.trace-before-hole.unknown':
    'A place or depth in {wall} is not known yet: the whole wall is traced before it is drilled.',
  'because.trace-before-hole.no-hole-yet': '{wall} is drilled here: it is traced first.',
  'because.trace-while-live':
    '{wall} is traced to {depth} while its cables are still live: a dead one is harder to find.',
  'because.trace-while-live.unknown':
    '{wall} is traced while its cables are still live: a dead one is harder to find.',
  'because.trace-while-live.no-hole-yet':
    '{wall} is traced while its cables are still live: a dead one is harder to find.',
  'because.line-before-marks.floor':
    'Drops are read down from the line; the highest floor lies {high:signed} from it.',
  'because.line-before-marks.floor.unknown': 'Drops are read down from the line.',
  'because.line-before-marks.heights':
    'Heights on {wall}, {height:signed} and the rest, are measured from the line.',
  'because.line-before-marks.heights.unknown': 'Heights on {wall} are measured from the line.',
  'because.line-before-marks.widths':
    'Widths are measured along the line; {unit} begins {left} from the left corner.',
  'because.line-before-marks.widths.unknown': 'Widths are measured along the line.',
  'because.line-before-marks.island': 'The top of {unit} is levelled to {height:signed} from the line.',
  'because.line-before-marks.island.unknown': 'The top of {unit} is levelled from the line.',
  'because.floor-before-heights':
    'The highest floor, {high:signed} at {where}, sets the height {height:signed}.',
  'because.floor-before-heights.unknown': 'The highest floor sets the heights, and it is not known yet.',
  'because.floor-before-heights.shims':
    'Under the {corner} corner of {unit} the floor is {floor:signed} from the line: {height} to be made up there.',
  'because.floor-before-heights.shims.unknown':
    'How much goes under the {corner} corner of {unit} is read off the floor.',
  'because.floor-before-heights.legs':
    'Under the {foot} leg of {unit} the floor is {floor:signed} from the line: the leg comes to {extension}.',
  'because.floor-before-heights.legs.unknown':
    'How far the {foot} leg of {unit} winds out is read off the floor.',
  'because.heights-before-holes.up':
    'Hole {hole} on {wall} is measured from its line: {height:signed} from the line.',
  'because.heights-before-holes.up.unknown': 'Hole {hole} on {wall} is measured from its line.',
  'because.heights-before-holes.along':
    'Hole {hole} on {wall} lies {along} from the left corner, off the unit’s mark.',
  'because.heights-before-holes.along.unknown': 'Hole {hole} on {wall} is measured off the unit’s mark.',
  'because.heights-before-holes.drill':
    'Holes ({count}) are drilled where they are marked: the first at {along}, {height:signed} from the line.',
  'because.heights-before-holes.drill.unknown': 'Holes ({count}) are drilled where they are marked.',
  'because.lines-before-placing.side': '{unit} comes to marks at {left} and {right}: they are there first.',
  'because.lines-before-placing.side.unknown': '{unit} comes to its marks: they are there first.',
  'because.lines-before-placing.top': '{unit} is levelled with its top {height:signed} from the line.',
  'because.lines-before-placing.top.unknown': '{unit} is levelled to its line.',
  'because.lines-before-placing.underside':
    '{unit} is levelled with its underside {height:signed} from the line.',
  'because.lines-before-placing.underside.unknown': '{unit} is levelled to its line.',
  'because.studs-before-holes': 'Holes in {wall} land in studs: the {stud} at {along} is found first.',
  'because.studs-before-holes.unknown': 'Holes in {wall} land in studs: the {stud} is found first.',
  'because.studs-before-holes.timber':
    'The timber from {from} to {to} is screwed to studs: they are found first.',
  'because.studs-before-holes.timber.unknown': 'The timber is screwed to studs: they are found first.',
  'because.timber-before-hole':
    '{unit} is screwed to timber from {from} to {to}, {height:signed}: it is in first.',
  'because.timber-before-hole.unknown': '{unit} is screwed to let-in timber: it is in first.',
  'because.timber-before-marks':
    'The timber from {from} to {to} is in and {wall} closed over it before holes are marked there.',
  'because.timber-before-marks.unknown':
    'Timber is in and {wall} closed over it before holes are marked there.',
  'because.assembled-before-placed': '{unit}, {width} by {height}, is whole and square first.',
  'because.assembled-before-placed.unknown': '{unit} is whole and square first.',
  'because.legs-before-placed':
    '{unit} stands on legs wound to their figures, the {foot} one to {extension}.',
  'because.legs-before-placed.unknown': '{unit} stands on its legs: they are on first.',
  'because.legs-before-placed.wound-in':
    '{unit} is stood up with its legs wound in, the {foot} one to {extension}.',
  'because.legs-before-placed.wound-in.unknown': '{unit} is stood up with its legs wound in.',
  'because.hangers-before-hung': '{unit} hooks on by its hangers, {hangerIn} in from its sides.',
  'because.hangers-before-hung.unknown': '{unit} hooks on by its hangers.',
  'because.plates-before-hung': '{unit}, top {top:signed}, hangs on plates {below} below its top.',
  'because.plates-before-hung.unknown': '{unit} hangs on its plates.',
  'because.plates-before-hung.rail': '{unit} hangs on the rail, its edge {edge:signed} from the line.',
  'because.plates-before-hung.rail.unknown': '{unit} hangs on the rail.',
  'because.drill-before-fix': 'Its screws go into holes ({count}) up to {depth} deep.',
  'because.drill-before-fix.unknown': 'Its screws go into holes ({count}).',
  'because.drill-before-fix.no-hole-yet': 'Screws go into holes.',
  'because.upright-before-placed': '{unit}, {height} high, is walked in upright.',
  'because.upright-before-placed.unknown': '{unit} is walked in upright.',
  'because.placed-before-levelled.top':
    '{unit} is levelled where it stands, top {height:signed} from the line.',
  'because.placed-before-levelled.top.unknown': '{unit} is levelled where it stands.',
  'because.placed-before-levelled.underside': '{unit} is levelled where it hangs, underside {height:signed}.',
  'because.placed-before-levelled.underside.unknown': '{unit} is levelled where it hangs.',
  'because.levelled-before-locked.underside':
    'The lock holds {unit} where it is: underside {height:signed} first.',
  'because.levelled-before-locked.underside.unknown': 'The lock holds {unit} where it is.',
  'because.levelled-before-fixed.top': 'Screws lock the error in: {unit} stands at {height:signed} first.',
  'because.levelled-before-fixed.top.unknown': 'Screws lock the error in: {unit} is level first.',
  'because.levelled-before-fixed.underside':
    'Screws lock the error in: {unit} hangs at {height:signed} first.',
  'because.levelled-before-fixed.underside.unknown': 'Screws lock the error in: {unit} is level first.',
  'because.levelled-before-fixed.join.top':
    '{unit} stands at {height:signed} before it is screwed to {other}.',
  'because.levelled-before-fixed.join.top.unknown': '{unit} is level before it is screwed to {other}.',
  'because.levelled-before-fixed.join.underside':
    '{unit} is secured at {height:signed} before it is clamped to {other}.',
  'because.levelled-before-fixed.join.underside.unknown':
    '{unit} is secured before it is clamped to {other}.',
  'because.locked-before-secured.underside':
    '{unit} can no longer move, underside {height:signed}, when it is screwed home.',
  'because.locked-before-secured.underside.unknown': '{unit} can no longer move when it is screwed home.',
  'because.held-until-secured.hung': 'Up is not secured: nobody lets go of {unit}, {mass}, in between.',
  'because.held-until-secured.hung.unknown': 'Up is not secured: nobody lets go of {unit} in between.',
  'because.held-until-secured.tall':
    '{unit}, {mass}, tips until it is restrained: nobody lets go in between.',
  'because.held-until-secured.tall.unknown': '{unit} tips until it is restrained: nobody lets go in between.',
  'because.secured-before-fronts': 'Fronts take {unit} from {stripped} to {full}: it is secured first.',
  'because.secured-before-fronts.unknown': 'Doors and drawers pull at {unit}: it is secured first.',
  'because.secured-before-loaded': '{appliance}, {mass}, goes into {unit} only when that is secured.',
  'because.secured-before-loaded.unknown': '{appliance} goes into {unit} only when that is secured.',
  'because.secured-before-loaded.part': '{part} is fixed to {unit}, top {top:signed}, when that is secured.',
  'because.secured-before-loaded.part.unknown': '{part} is fixed to {unit} when that is secured.',
  'because.path-blocked.front':
    '{unit} comes in from the front, through where {other} will be, {left} to {right} on its wall.',
  'because.path-blocked.front.unknown': '{unit} comes in from the front, through where {other} will be.',
  'because.path-blocked.left':
    '{unit} comes in from its left, through where {other} will be, {left} to {right} on its wall.',
  'because.path-blocked.left.unknown': '{unit} comes in from its left, through where {other} will be.',
  'because.path-blocked.right':
    '{unit} comes in from its right, through where {other} will be, {left} to {right} on its wall.',
  'because.path-blocked.right.unknown': '{unit} comes in from its right, through where {other} will be.',
  'because.path-blocked.above':
    '{unit} comes in from above, through where {other} will be, {left} to {right} on its wall.',
  'because.path-blocked.above.unknown': '{unit} comes in from above, through where {other} will be.',
  'because.tilt-floor':
    '{unit} lies {length} long before it stands up, over the floor of {other}, {left} to {right} on its wall.',
  'because.tilt-floor.unknown': '{unit} lies over the floor of {other} before it stands up.',
  'because.all-secured-before-hold-point.top':
    '{unit} stands fast at {height:signed} before the room is proved.',
  'because.all-secured-before-hold-point.top.unknown': '{unit} stands fast before the room is proved.',
  'because.all-secured-before-hold-point.underside':
    '{unit} hangs fast at {height:signed} before the room is proved.',
  'because.all-secured-before-hold-point.underside.unknown': '{unit} hangs fast before the room is proved.',
  'because.all-secured-before-hold-point.joined':
    '{left} and {right} are joined at {at} before the room is proved.',
  'because.all-secured-before-hold-point.joined.unknown':
    '{left} and {right} are joined before the room is proved.',
  'because.hold-point-before-worktop':
    'Base tops are proved at {height:signed} before {worktop} covers them.',
  'because.hold-point-before-worktop.unknown': 'Base tops are proved before {worktop} covers them.',
  'because.hold-point-before-worktop.no-height': 'The room is proved before {worktop} covers it.',
  'because.worktop-before-appliance': '{worktop}, {thickness} thick, carries or holds {appliance}.',
  'because.worktop-before-appliance.unknown': '{worktop} carries or holds {appliance}.',
  'because.worktop-before-upstand': '{part} sits on {worktop}, {thickness} thick.',
  'because.worktop-before-upstand.unknown': '{part} sits on {worktop}.',
  'because.fixed-before-panel': '{part}, {side}, is scribed to {unit} when that no longer moves.',
  'because.fixed-before-panel.unknown': '{part} is scribed to {unit} when that no longer moves.',
  'because.worktop-before-plinth': '{plinth}, {height} high, is in the way while {worktop} is laid.',
  'because.worktop-before-plinth.unknown': '{plinth} is in the way while {worktop} is laid.',
  'because.fronts-last.worktop': 'Fronts of {unit} are marked by {worktop}, {thickness} thick, going past.',
  'because.fronts-last.worktop.unknown': 'Fronts of {unit} are marked by {worktop} going past.',
  'because.fronts-last.appliance':
    '{appliance} goes into {unit}, {width} wide, before its fronts hang in the way.',
  'because.fronts-last.appliance.unknown': '{appliance} goes into {unit} before its fronts hang in the way.',
  'because.plinth-after-connect': '{appliance} is tested before {plinth}, {height} high, hides it.',
  'because.plinth-after-connect.unknown': '{appliance} is tested before {plinth} hides it.',
  'because.trade-before-connect':
    'Only a registered gas engineer connects {appliance}: they are booked first.',
  'because.sink-before-machine': 'The water of {machine} goes out by the trap of {sink}, as a rule.',
  'because.supply-after-holes': 'Holes for {what} ({count}) are drilled while everything is still off.',
  'because.supply-after-holes.no-hole-yet': 'Holes for {what} are drilled while everything is still off.',
  'because.supply-after-holes.off-first':
    'It is made off before it comes on again: for {count} pieces of work that drill into a wall.',
  'because.supply-before-connect': '{appliance} is tried as it is connected: that wants the supply.',
  'because.snag-last.supply':
    'The room is handed over with its supply on, made off for {count} pieces of work that drilled.',
  'because.snag-last': 'Last of all {what}, {figure}, is looked at once more.',
  'because.snag-last.unknown': 'Last of all {what} is looked at once more.',
  'because.snag-last.no-figure': 'Last of all {what} is looked at once more.',
  'because.tall-before-wall':
    '{tall} first: the top of {unit}, {top:signed}, is lined up with its {tallTop:signed}.',
  'because.tall-before-wall.unknown': '{tall} first: the top of {unit} is lined up with it.',
  'because.tall-before-wall.proved':
    '{tall}, top {tallTop:signed}, cannot come in past {unit}, top {top:signed}: geometry proves the habit.',
  'because.tall-before-wall.proved.unknown': '{tall} cannot come in past {unit}: geometry proves the habit.',
  'because.wall-before-base': '{unit}, {mass}, is lifted without reaching over {base}, {depth} deep.',
  'because.wall-before-base.unknown': '{unit} is lifted without reaching over {base}.',
  'because.wall-before-base.proved':
    '{unit}, {mass}, cannot come in past {base}, {depth} deep: geometry proves the habit.',
  'because.wall-before-base.proved.unknown': '{unit} cannot come in past {base}: geometry proves the habit.',
  'because.corner-before-neighbours': '{corner} has no freedom: {unit}, from {left}, grows from it.',
  'because.corner-before-neighbours.unknown': '{corner} has no freedom: {unit} grows from it.',
  'because.corner-before-neighbours.proved':
    '{corner} cannot come in past {unit}, from {left}: geometry proves the habit.',
  'because.corner-before-neighbours.proved.unknown':
    '{corner} cannot come in past {unit}: geometry proves the habit.',
  'because.outward-along-run.corner':
    '{unit} comes up to {other} at {at} along its wall: the run grows out from {start}.',
  'because.outward-along-run.corner.unknown': '{unit} comes up to {other}: the run grows out from {start}.',
  'because.outward-along-run.tall':
    '{unit} comes up to {other} at {at} along its wall: wall units begin beside {start}, whose top they share.',
  'because.outward-along-run.tall.unknown':
    '{unit} comes up to {other}: wall units begin beside {start}, whose top they share.',
  'because.outward-along-run.high-point':
    '{unit} comes up to {other} at {at} along its wall: the run begins with {start}, over its highest floor, {floor:signed}.',
  'because.outward-along-run.high-point.unknown':
    '{unit} comes up to {other}: the run begins with {start}, over its highest floor.',
  'because.outward-along-run.shared-high-point':
    '{other} and {start} both stand on the highest floor, {floor:signed} from the line: both are level before the run goes on to {unit}.',
  'because.outward-along-run.near-end':
    '{unit} comes up to {other} at {at} along its wall: the run begins with {start}, nearest its corner.',
  'because.outward-along-run.near-end.unknown':
    '{unit} comes up to {other}: the run begins with {start}, nearest its corner.',
  'because.levelled-before-next':
    '{other} is level, top {top:signed}, before {unit} is set against it at {at} along its wall.',
  'because.levelled-before-next.unknown': '{other} is level before {unit} is set against it.',
  'because.joins-outward':
    '{left} and {right} are joined at {at} first: joints go outward from {start}, the first to be level.',
  'because.joins-outward.unknown':
    '{left} and {right} are joined first: joints go outward from {start}, the first to be level.',
  'because.assembled-before-filler': '{part}, {width} wide, is screwed to {unit} when that is whole.',
  'because.assembled-before-filler.unknown': '{part} is screwed to {unit} when that is whole.',
  'because.filler-after-first': '{first} is level before {part}, {width} wide, is set against it.',
  'because.filler-after-first.unknown': '{first} is level before {part} is set against it.',
  'because.filler-before-next.corner':
    '{part}, {width} wide, keeps {next} out of the corner: it is in before {next} is pushed home.',
  'because.filler-before-next.corner.unknown':
    '{part} keeps {next} out of the corner: it is in before {next} is pushed home.',
  'because.filler-before-next.between':
    '{part}, {width} wide, stands between {first} and {next}: it is in before {next} is pushed home.',
  'because.filler-before-next.between.unknown':
    '{part} stands between {first} and {next}: it is in before {next} is pushed home.',
  'because.join-before-fix': '{left} and {right} are joined at {at} before a screw can pull {unit} crooked.',
  'because.join-before-fix.unknown': '{left} and {right} are joined before a screw can pull {unit} crooked.',
  'because.panel-carries-worktop':
    '{part} stands first: beside the appliance it alone carries {worktop}, {thickness} thick.',
  'because.panel-carries-worktop.unknown':
    '{part} stands first: beside the appliance it alone carries {worktop}.',
  'because.panels-after-run': '{part} waits until {unit}, up to {right}, no longer moves.',
  'because.panels-after-run.unknown': '{part} waits until {unit} no longer moves.',
  'because.panels-after-run.worktop': '{part} is in before {worktop}, {thickness} thick, meets it.',
  'because.panels-after-run.worktop.unknown': '{part} is in before {worktop} meets it.',
  'because.heavy-before-fronts': '{what}, {mass}, is carried through before fronts hang on {unit}.',
  'because.heavy-before-fronts.unknown': '{what} is carried through before fronts hang on {unit}.',
  'because.fronts-before-cornice': '{part} is mitred to the doors of {unit}, {width} wide, as they hang.',
  'because.fronts-before-cornice.unknown': '{part} is mitred to the doors of {unit} as they hang.',
  'because.wish': 'You asked for this order.',
  'because.wish.at-least': 'You asked for this order, with at least {least} between.',
  'because.wish.at-most': 'You asked for this order, with at most {most} between.',
  'because.wish.between': 'You asked for this order, with {least} to {most} between.',
  'finding.wish-names-nothing': 'Wish {wish} names “{named}”, and no operation here is that.',
  'finding.wish-names-nothing.empty': 'Wish {wish} leaves open which operation it means.',
  'finding.wish-names-nothing.ask': 'Correct the wish, or take it out.',
  'finding.wish-not-met':
    'Wish {wish} allows {most} min between, but one crew has more work to do in between in this order.',
  'finding.wish-not-met.ask': 'Allow more time, or have two crews.',
} as const

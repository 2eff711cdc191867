/* Generated from schemas/ by `npm run generate`: change shared/ or src/upkeep/schemas instead. */

export interface Proposal {
/**
 * yours; echoed
 */
id?: (string | number)
tree: Tree
operation: Operation
/**
 * YYYY-MM-DD
 */
date?: string
where?: Where
/**
 * 
 * Items: id of a rule that is not to be asked
 */
ignore?: string[]
/**
 * yours; echoed, never read
 */
meta?: {

}
}
export interface Tree {
/**
 * where the tree stands in its year
 */
phase?: ("dormant" | "bud-swell" | "bud-burst" | "leafing-out" | "extending" | "hardened-off" | "turning" | "leaf-fall" | "resting" | "growing")
/**
 * id, accepted name, synonym or common name; a genus or group is a good answer too
 */
species: string
/**
 * how strongly it grew in its last season
 */
vigour?: ("strong" | "steady" | "weak")
/**
 * whether it is well, on the mend, or sick
 */
health?: ("sound" | "recovering" | "ailing")
/**
 * still being built, or built and kept fine
 */
stage?: ("seedling" | "developing" | "refined")
/**
 * what its roots grow in
 */
growing?: ("ground" | "deep-container" | "bonsai-pot")
/**
 * where it stands now
 */
standing?: ("outdoors" | "cold-frame" | "greenhouse" | "cool-room" | "heated-room")
/**
 * roots: sound, filling the pot, or failing (rot, sour soil, a burst pot)
 */
rootState?: ("sound" | "bound" | "failing")
/**
 * what is seen of flowers
 */
flower?: ("none" | "bud" | "open" | "over")
/**
 * how it was raised or got
 */
origin?: ("seed" | "cutting" | "layer" | "graft" | "nursery" | "collected")
/**
 * age (years)
 */
ageYears?: number
lastRepotted?: string
log?: {
[k: string]: unknown
}[]
structure?: {
/**
 * degrees clockwise seen from above, 0 at the front
 */
frontAzimuthDeg?: number
trunks?: {
id: string
from?: string
/**
 * height at which it leaves the other trunk
 */
atMm?: number
points: {
/**
 * height above the soil
 */
heightMm: number
/**
 * diameter over bark
 */
diameterMm: number
/**
 * offset to the viewer’s right
 */
sideMm?: number
/**
 * offset away from the viewer
 */
backMm?: number
}[]
}[]
wounds?: {
/**
 * height
 */
heightMm: number
/**
 * degrees clockwise seen from above, 0 at the front
 */
azimuthDeg?: number
/**
 * width
 */
widthMm: number
closed?: boolean
}[]
branches?: {
id: string
from?: string
/**
 * height of the joint
 */
heightMm: number
/**
 * degrees clockwise seen from above, 0 at the front
 */
azimuthDeg?: number
/**
 * diameter at the joint
 */
diameterMm?: number
/**
 * by eye, where no diameter is told
 */
branchToTrunk?: number
/**
 * length
 */
lengthMm?: number
/**
 * degrees above the horizontal
 */
pitchDeg?: number
/**
 * share of the tree’s foliage
 */
foliageShare?: number
/**
 * how far back foliage reaches, from the trunk
 */
foliageBackToMm?: number
/**
 * Items: distance from the trunk
 */
budsAtMm?: number[]
/**
 * width of its foliage
 */
padMm?: number
dead?: boolean
role?: ("keep" | "sacrifice" | "leader" | "undecided")
faults?: ("crossing" | "parallel" | "inside-curve" | "straight-up" | "straight-down" | "toward-front" | "between-trunks" | "too-low")[]
}[]
}
id?: string
cultivar?: string
/**
 * species whose roots it stands on, where it is grafted
 */
rootstock?: string
/**
 * what its owner has seen on this very tree; beats the catalogue
 */
traits?: {
"form.leafType"?: ("needle" | "scale" | "broad" | "succulent")
"form.leafHabit"?: ("deciduous" | "semi-evergreen" | "evergreen")
"form.arrangement"?: ("alternate" | "opposite" | "whorled")
"form.whorls"?: ("none" | "some" | "marked")
"form.dominance"?: ("apex" | "balanced" | "base")
"form.juvenileReversion"?: boolean
"growth.flushes"?: ("one" | "several" | "continuous")
"growth.pace"?: ("slow" | "moderate" | "fast")
"growth.minNightC"?: number
"budding.leafyWood"?: ("good" | "fair" | "poor" | "none")
"budding.bareWood"?: ("good" | "fair" | "poor" | "none")
"budding.stump"?: ("good" | "fair" | "poor" | "none")
"budding.base"?: ("good" | "fair" | "poor" | "none")
"healing.pace"?: ("fast" | "moderate" | "slow")
"healing.ingrowthMm"?: [number, number]
"healing.dieBackMm"?: [number, number]
"healing.bleeds"?: ("no" | "resin" | "sap" | "latex")
"healing.rot"?: ("resists" | "even" | "weak")
"roots.maxRemoved"?: number
"roots.bareRoot"?: ("well" | "careful" | "young" | "never")
"roots.phases"?: ("dormant" | "bud-swell" | "bud-burst" | "leafing-out" | "extending" | "hardened-off" | "turning" | "leaf-fall" | "resting" | "growing")[]
"roots.intervalYearsYoung"?: number
"roots.intervalYearsOld"?: number
"roots.killC"?: number
"roots.fungalPartner"?: boolean
"roots.dryDaysAfterCut"?: number
"roots.acid"?: boolean
"roots.afterBloom"?: boolean
"leaves.defoliation"?: ("full" | "part" | "never")
"leaves.candles"?: ("none" | "leave" | "pinch" | "cut")
"leaves.needleYears"?: [number, number]
"flowering.wood"?: ("this-year" | "last-year" | "spurs" | "old")
"flowering.budSet"?: ("dormant" | "bud-swell" | "bud-burst" | "leafing-out" | "extending" | "hardened-off" | "turning" | "leaf-fall" | "resting" | "growing")[]
"flowering.bloom"?: ("before-leaves" | "with-leaves" | "summer" | "autumn" | "winter" | "not-noted")
"flowering.grownFor"?: boolean
"wood.suppleness"?: ("good" | "fair" | "poor")
"wood.brittlePhases"?: ("dormant" | "bud-swell" | "bud-burst" | "leafing-out" | "extending" | "hardened-off" | "turning" | "leaf-fall" | "resting" | "growing")[]
"wood.markingWeeks"?: number
"wood.wirePhases"?: ("dormant" | "bud-swell" | "bud-burst" | "leafing-out" | "extending" | "hardened-off" | "turning" | "leaf-fall" | "resting" | "growing")[]
"wood.deadwood"?: ("good" | "fair" | "poor")
"wood.sectored"?: boolean
"pruning.maxFoliageShare"?: number
"pruning.diseaseRisks"?: ("oak-wilt" | "elm-disease" | "silver-leaf" | "fire-blight" | "borers" | "bark-beetles" | "canker" | "box-blight")[]
"propagation.softwood"?: ("good" | "fair" | "poor" | "none")
"propagation.semiRipe"?: ("good" | "fair" | "poor" | "none")
"propagation.hardwood"?: ("good" | "fair" | "poor" | "none")
"propagation.root"?: ("good" | "fair" | "poor" | "none")
"propagation.airLayer"?: ("good" | "fair" | "poor" | "none")
"propagation.coldWeeks"?: number
"propagation.warmWeeks"?: number
"rest.need"?: ("obligate" | "optional" | "none")
"rest.season"?: ("winter" | "summer" | "dry" | "none")
"rest.coldWeeks"?: number
"rest.warmestC"?: number
"rest.coolestC"?: number
"climate.coldestC"?: number
"climate.heat"?: ("likes" | "bears" | "suffers")
"climate.light"?: ("sun" | "part" | "shade")
"hazards.skin"?: ("not-recorded" | "irritant" | "burns")
"hazards.eaten"?: ("people" | "pets" | "livestock")[]
"hazards.thorns"?: boolean
"hazards.dust"?: boolean
"season.model"?: ("deciduous" | "evergreen" | "mild-evergreen" | "tropical" | "dry-deciduous")
"season.budSwell"?: number
"season.leafOut"?: number
"season.hardens"?: number
"season.turns"?: number
"season.leafFall"?: number
}
trunk?: {
/**
 * above the roots
 */
diameterMm?: number
/**
 * height of the tree
 */
heightMm?: number
/**
 * growth in diameter in its last season
 */
thickenedMm?: number
}
aim?: {
/**
 * whether flowers or fruit are wanted next season
 */
flowers?: ("no" | "yes")
/**
 * a style of shared/aims.yaml
 */
style?: ("formal-upright" | "informal-upright" | "slanting" | "cascade" | "twin-trunk" | "clump" | "broom" | "literati" | "windswept")
/**
 * height aimed at
 */
heightMm?: number
/**
 * trunk diameter aimed at
 */
trunkDiameterMm?: number
}
}
export interface Operation {
/**
 * the operation, or a trade name of it
 */
op: ("remove-branch" | "branch removal" | "take off a branch" | "flush cut" | "concave cut" | "collar cut" | "leave a stub" | "clean-stub" | "stub removal" | "tidy a stub" | "cut-back" | "prune back" | "shorten" | "cut to two nodes" | "hard pruning" | "trunk-chop" | "chop" | "trunk cut" | "thin-shoots" | "shoot selection" | "thin to two" | "trim" | "clip" | "outline trimming" | "shear" | "remove-suckers" | "desucker" | "rub off basal shoots" | "remove-flowers" | "disbud flowers" | "deadhead" | "thin fruit" | "pinch" | "tip pinching" | "pinch back" | "candle-cut" | "decandle" | "decandling" | "candle-pinch" | "candle shortening" | "needle-pluck" | "needle thinning" | "needle plucking" | "defoliate" | "leaf cutting" | "leaf removal" | "partial leaf removal" | "wire" | "wiring" | "bend" | "heavy bending" | "unwire" | "remove wire" | "wire removal" | "strip-bark" | "deadwood" | "jin" | "shari" | "strip a branch" | "seal-wound" | "wound sealing" | "cut paste" | "graft" | "thread graft" | "approach graft" | "scion graft" | "bud graft" | "repot" | "root pruning" | "repotting" | "bare-root" | "slip-pot" | "pot up" | "pot on" | "trim-escaped-roots" | "trim escaped roots" | "divide" | "split" | "division" | "collect" | "dig up" | "lift" | "collecting" | "plant-out" | "plant in the ground" | "field-grow" | "take-cuttings" | "cuttings" | "strike cuttings" | "softwood cuttings" | "hardwood cuttings" | "root cuttings" | "air-layer" | "layer" | "air layering" | "ground layer" | "sow" | "sow seed" | "raise from seed" | "overwinter" | "winter storage" | "winter berth" | "winter indoors" | "move-outdoors" | "put out" | "bring outside" | "move-indoors" | "bring in" | "bring inside" | "feed" | "fertilise" | "fertilize" | "feeding")
/**
 * id of a branch in tree.structure
 */
branch?: string
/**
 * whether any foliage (or, on a leafless tree, any bud or twig) is left below the cut
 */
foliageLeft?: boolean
/**
 * age of the wood that is cut into
 */
woodAge?: ("this-year" | "last-year" | "old")
/**
 * nodes left on the shoot below the cut
 */
nodesLeft?: number
/**
 * buds left on the shoot below the cut
 */
budsLeft?: number
/**
 * how the cut is finished
 */
finish?: ("flush" | "concave" | "collar" | "stub")
/**
 * diameter of the branch, shoot or wood that is cut or bent (mm)
 */
branchDiameterMm?: number
/**
 * diameter of the branch as a share of the trunk's just above it (share)
 */
branchToTrunk?: number
/**
 * diameter of the side branch that takes over, as a share of the trunk that is cut (share)
 */
leaderToTrunk?: number
/**
 * share of the tree's foliage on what is cut off (share)
 */
foliageShare?: number
/**
 * length of the stub left beyond the last bud or the collar (mm)
 */
stubMm?: number
/**
 * whether the stub has dried back to where it will stop
 */
stubDry?: boolean
/**
 * whether shoots that are wanted grow on the stub or at its foot
 */
shootsAtStub?: boolean
/**
 * whether the cut is sealed
 */
sealed?: boolean
/**
 * height of the cut on the trunk (mm)
 */
heightMm?: number
/**
 * share of the living girth that is wounded at one level (share)
 */
girthShare?: number
/**
 * share of the shoots, tips, candles, needles or leaves that are taken, of those there are (share)
 */
shareRemoved?: number
/**
 * shoots left at each point
 */
left?: number
/**
 * what is taken off
 */
what?: ("buds" | "flowers" | "fruit")
/**
 * how hard the wood is bent
 */
bend?: ("gentle" | "firm" | "severe")
/**
 * radius of the bend (mm)
 */
radiusMm?: number
/**
 * how wire comes off
 */
how?: ("cut" | "unwind")
/**
 * whether the wire has begun to bite
 */
biting?: boolean
/**
 * what the bark is stripped from
 */
on?: ("branch" | "trunk")
/**
 * share of the roots that is taken (share)
 */
rootsRemoved?: number
/**
 * how much of the old soil is taken
 */
soilRemoved?: ("none" | "some" | "all")
/**
 * whether the flare of the surface roots is laid bare
 */
exposeFlare?: boolean
/**
 * where it spends the winter
 */
placement?: ("outdoors-exposed" | "outdoors-sheltered" | "cold-frame" | "cool-room" | "heated-room")
/**
 * warmest that the winter berth gets (°C)
 */
highestC?: number
/**
 * where it is moved to
 */
to?: ("cool-room" | "greenhouse" | "heated-room")
/**
 * how warm even the cold hours of the winter stay are (°C)
 */
lowestC?: number
/**
 * coldest night expected in the days after the move (°C)
 */
coldestNightC?: number
/**
 * what wood the cuttings are of
 */
wood?: ("softwood" | "semi-ripe" | "hardwood" | "root")
/**
 * whether they carry roots already
 */
rooted?: boolean
/**
 * where the ring is cut
 */
at?: ("branch" | "trunk" | "trunk-base")
/**
 * kind of graft
 */
method?: ("approach" | "thread" | "scion" | "bud")
/**
 * weeks of moist cold that the seed has had (weeks)
 */
coldWeeks?: number
/**
 * weeks of moist warmth that the seed has had before the cold (weeks)
 */
warmWeeks?: number
/**
 * how rich in nitrogen the feed is
 */
nitrogen?: ("low" | "balanced" | "high")
/**
 * YYYY, YYYY-MM or YYYY-MM-DD, as exact as known
 */
date?: string
outcome?: string
note?: string
}
export interface Where {
/**
 * id of a bundled station
 */
place?: string
/**
 * degrees, north is positive
 */
latitude?: number
/**
 * degrees, east is positive
 */
longitude?: number
/**
 * metres above the sea
 */
elevationM?: number
/**
 * mean daily minimum of each month, January first
 * 
 */
monthlyMinC?: [number, number, number, number, number, number, number, number, number, number, number, number]
/**
 * mean daily maximum of each month, January first
 * 
 */
monthlyMaxC?: [number, number, number, number, number, number, number, number, number, number, number, number]
/**
 * MM-DD, the usual last frost of the cold season
 */
lastFrost?: string
/**
 * MM-DD, the usual first frost of the cold season
 */
firstFrost?: string
/**
 * ISO 3166-1 country or 3166-2 state
 */
region?: string
daily?: {
/**
 * YYYY-MM-DD
 */
date: string
/**
 * lowest of the day
 */
minC: number
/**
 * highest of the day
 */
maxC: number
}[]
}

export interface Assessment {
schema: "assessment/1"
id?: (string | number)
proposal: {
[k: string]: unknown
}
verdict: ("allowed" | "risky" | "advise-against")
range: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
settled: boolean
summary: Message
findings: {
rule: string
verdict: ("risky" | "advise-against")
fires: ("certainly" | "possibly")
costs: ("tree" | "branch" | "flowers" | "time" | "looks")
title: Message
because: Message
facts: {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
/**
 * a value of the fact; null where it is not known
 */
value: (string | number | boolean | null | (string | number)[])
limit: {

}
/**
 * how the fact is known: given, worked-out, season, estimated, assumed, unknown, or the level that a trait came from
 */
from: string
plusMinus?: number
/**
 * the pack that the trait came from that it is, or that sets its limit
 */
pack?: string
}[]
sources: {
id: string
title: string
author?: string
year?: number
from: ("read" | "memory" | "practice")
studied: string
}[]
strength: ("strong" | "fair" | "weak")
disputed?: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")[]
/**
 * the pack that the rule came from
 */
pack?: string
}[]
assumed: {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
/**
 * a value of the fact; null where it is not known
 */
value: (string | number | boolean | null | (string | number)[])
otherwise: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}[]
questions: []|[{
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}]|[{
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}, {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}]|[{
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}, {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}, {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}]|[{
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}, {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}, {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}, {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}]|[{
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}, {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}, {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}, {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}, {
fact: ("season.phase" | "season.growingDaysLeft" | "season.rootDaysLeft" | "season.daysToBudSwell" | "season.daysToFirstFrost" | "season.daysToLastFrost" | "season.nightC" | "season.coldNightC" | "season.dayC" | "season.awakeEarly" | "place.winterLowC" | "asked.date" | "place.told" | "place.region" | "disease.inSeason" | "disease.here" | "law.names" | "tree.species" | "tree.vigour" | "tree.health" | "tree.stage" | "tree.growing" | "tree.standing" | "tree.rootState" | "tree.flower" | "tree.origin" | "tree.ageYears" | "tree.trunkDiameterMm" | "tree.ringMm" | "aim.flowers" | "aim.style" | "aim.trunkGainMm" | "history.daysSinceRepot" | "history.daysSinceCollected" | "history.daysSinceDefoliated" | "history.daysSinceCandleCut" | "history.daysSinceHardWork" | "history.daysSinceStripped" | "history.stubAgeDays" | "history.daysSinceCut" | "history.wiredDays" | "history.daysSinceLayered" | "work.strain" | "sitting.hardOperations" | "history.strain" | "sitting.strain" | "sitting.strainSum" | "sitting.foliageShare" | "sitting.cutAreaShare" | "cut.foliageLeft" | "cut.woodAge" | "cut.nodesLeft" | "cut.budsLeft" | "cut.below" | "cut.rebudding" | "cut.finish" | "cut.branchDiameterMm" | "cut.branchToTrunk" | "cut.leaderToTrunk" | "cut.foliageShare" | "cut.stubMm" | "cut.stubDry" | "cut.shootsAtStub" | "cut.sealed" | "cut.heightMm" | "wound.widthMm" | "wound.closureYears" | "wound.girthShare" | "structure.levelMembersNow" | "structure.levelMembers" | "structure.levelMates" | "structure.bars" | "structure.collarShare" | "structure.gapNearShare" | "structure.heightShare" | "structure.baredShare" | "structure.liveCrownLeft" | "structure.holeDeg" | "structure.lowFoliageLeft" | "structure.aspectRatio" | "structure.thickerAbove" | "structure.role" | "structure.isTrunk" | "structure.faults" | "cut.secondNodeMm" | "cut.lostIfNodeFails" | "shoots.shareRemoved" | "shoots.left" | "flowers.what" | "flowers.budsSet" | "bend.severity" | "bend.radiusMm" | "wire.how" | "wire.biting" | "deadwood.on" | "roots.shareRemoved" | "roots.soilRemoved" | "roots.exposeFlare" | "winter.placement" | "winter.highestC" | "move.to" | "exposure.lowestC" | "move.coldestNightC" | "exposure.warmthC" | "cuttings.wood" | "cuttings.rooted" | "cuttings.rooting" | "layer.at" | "graft.method" | "sow.coldWeeks" | "sow.warmWeeks" | "feed.nitrogen" | "species.form.leafType" | "species.form.leafHabit" | "species.form.arrangement" | "species.form.whorls" | "species.form.dominance" | "species.form.juvenileReversion" | "species.growth.flushes" | "species.growth.pace" | "species.growth.minNightC" | "species.budding.leafyWood" | "species.budding.bareWood" | "species.budding.stump" | "species.budding.base" | "species.healing.pace" | "species.healing.ingrowthMm" | "species.healing.dieBackMm" | "species.healing.bleeds" | "species.healing.rot" | "species.roots.maxRemoved" | "species.roots.bareRoot" | "species.roots.phases" | "species.roots.intervalYearsYoung" | "species.roots.intervalYearsOld" | "species.roots.killC" | "species.roots.fungalPartner" | "species.roots.dryDaysAfterCut" | "species.roots.acid" | "species.roots.afterBloom" | "species.leaves.defoliation" | "species.leaves.candles" | "species.leaves.needleYears" | "species.flowering.wood" | "species.flowering.budSet" | "species.flowering.bloom" | "species.flowering.grownFor" | "species.wood.suppleness" | "species.wood.brittlePhases" | "species.wood.markingWeeks" | "species.wood.wirePhases" | "species.wood.deadwood" | "species.wood.sectored" | "species.pruning.maxFoliageShare" | "species.pruning.diseaseRisks" | "species.propagation.softwood" | "species.propagation.semiRipe" | "species.propagation.hardwood" | "species.propagation.root" | "species.propagation.airLayer" | "species.propagation.coldWeeks" | "species.propagation.warmWeeks" | "species.rest.need" | "species.rest.season" | "species.rest.coldWeeks" | "species.rest.warmestC" | "species.rest.coolestC" | "species.climate.coldestC" | "species.climate.heat" | "species.climate.light" | "species.hazards.skin" | "species.hazards.eaten" | "species.hazards.thorns" | "species.hazards.dust" | "species.hazards.regulated" | "species.season.model" | "species.season.budSwell" | "species.season.leafOut" | "species.season.hardens" | "species.season.turns" | "species.season.leafFall")
ask: Message
answers: {
/**
 * a value of the fact; null where it is not known
 */
value?: (string | number | boolean | null | (string | number)[])
below?: number
atLeast?: number
verdict: ("allowed" | "risky" | "advise-against")
range?: [("allowed" | "risky" | "advise-against"), ("allowed" | "risky" | "advise-against")]
}[]
}]
changes: {
patch: {
[k: string]: unknown
}
why: Message
verdict: ("allowed" | "risky" | "advise-against")
}[]
windows: {
from: string
to: string
plusMinusDays: number
phase?: ("dormant" | "bud-swell" | "bud-burst" | "leafing-out" | "extending" | "hardened-off" | "turning" | "leaf-fall" | "resting" | "growing")
verdict: ("allowed" | "risky" | "advise-against")
}[]
alternatives: {
operation: {
op: ("remove-branch" | "clean-stub" | "cut-back" | "trunk-chop" | "thin-shoots" | "trim" | "remove-suckers" | "remove-flowers" | "pinch" | "candle-cut" | "candle-pinch" | "needle-pluck" | "defoliate" | "wire" | "unwire" | "strip-bark" | "seal-wound" | "graft" | "repot" | "slip-pot" | "trim-escaped-roots" | "divide" | "collect" | "plant-out" | "take-cuttings" | "air-layer" | "sow" | "overwinter" | "move-outdoors" | "move-indoors" | "feed")
[k: string]: string | number | boolean | unknown[] | "remove-branch" | "clean-stub" | "cut-back" | "trunk-chop" | "thin-shoots" | "trim" | "remove-suckers" | "remove-flowers" | "pinch" | "candle-cut" | "candle-pinch" | "needle-pluck" | "defoliate" | "wire" | "unwire" | "strip-bark" | "seal-wound" | "graft" | "repot" | "slip-pot" | "trim-escaped-roots" | "divide" | "collect" | "plant-out" | "take-cuttings" | "air-layer" | "sow" | "overwinter" | "move-outdoors" | "move-indoors" | "feed"
}
verdict: ("allowed" | "risky" | "advise-against")
why: Message
}[]
expect: {
closureYears?: [number, number]
recoveryWeeks?: [number, number]
wireMarksWeeks?: [number, number]
dieBackMm?: [number, number]
backBudding?: ("sure" | "likely" | "unsure" | "unlikely" | "none")
regrowth?: Message
}
after: {
do: Message
from?: string
to?: string
operation?: {
op: ("remove-branch" | "clean-stub" | "cut-back" | "trunk-chop" | "thin-shoots" | "trim" | "remove-suckers" | "remove-flowers" | "pinch" | "candle-cut" | "candle-pinch" | "needle-pluck" | "defoliate" | "wire" | "unwire" | "strip-bark" | "seal-wound" | "graft" | "repot" | "slip-pot" | "trim-escaped-roots" | "divide" | "collect" | "plant-out" | "take-cuttings" | "air-layer" | "sow" | "overwinter" | "move-outdoors" | "move-indoors" | "feed")
[k: string]: string | number | boolean | unknown[] | "remove-branch" | "clean-stub" | "cut-back" | "trunk-chop" | "thin-shoots" | "trim" | "remove-suckers" | "remove-flowers" | "pinch" | "candle-cut" | "candle-pinch" | "needle-pluck" | "defoliate" | "wire" | "unwire" | "strip-bark" | "seal-wound" | "graft" | "repot" | "slip-pot" | "trim-escaped-roots" | "divide" | "collect" | "plant-out" | "take-cuttings" | "air-layer" | "sow" | "overwinter" | "move-outdoors" | "move-indoors" | "feed"
}
}[]
prunings: {
operation: {
op: ("remove-branch" | "clean-stub" | "cut-back" | "trunk-chop" | "thin-shoots" | "trim" | "remove-suckers" | "remove-flowers" | "pinch" | "candle-cut" | "candle-pinch" | "needle-pluck" | "defoliate" | "wire" | "unwire" | "strip-bark" | "seal-wound" | "graft" | "repot" | "slip-pot" | "trim-escaped-roots" | "divide" | "collect" | "plant-out" | "take-cuttings" | "air-layer" | "sow" | "overwinter" | "move-outdoors" | "move-indoors" | "feed")
[k: string]: string | number | boolean | unknown[] | "remove-branch" | "clean-stub" | "cut-back" | "trunk-chop" | "thin-shoots" | "trim" | "remove-suckers" | "remove-flowers" | "pinch" | "candle-cut" | "candle-pinch" | "needle-pluck" | "defoliate" | "wire" | "unwire" | "strip-bark" | "seal-wound" | "graft" | "repot" | "slip-pot" | "trim-escaped-roots" | "divide" | "collect" | "plant-out" | "take-cuttings" | "air-layer" | "sow" | "overwinter" | "move-outdoors" | "move-indoors" | "feed"
}
verdict: ("allowed" | "risky" | "advise-against")
}[]
cautions: {
id: string
text: string
}[]
notices: Message[]
basis: {
species: string
asked?: string
traitsFrom: ("taxon" | "genus" | "group")
rootstock?: string
own?: string[]
phase?: string
phaseFrom: ("seen" | "season" | "none")
where: Message
knowledge: string
packs?: {
namespace: string
version?: string
}[]
ignored?: string[]
}
meta?: {

}
}
export interface Message {
id: string
params: {
[k: string]: string | number | boolean
}
text: string
}

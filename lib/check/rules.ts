import type { Rule } from "../model/rule.ts";
import { alikeHolesPermitAlike } from "./rules/alike-holes-permit-alike.ts";
import { bendSparesTheThread } from "./rules/bend-spares-the-thread.ts";
import { caseNamesNoPerson } from "./rules/case-names-no-person.ts";
import { caseSheetExpires } from "./rules/case-sheet-expires.ts";
import { cautionStandsAtItsAct } from "./rules/caution-stands-at-its-act.ts";
import { chainHasOneCandidate } from "./rules/chain-has-one-candidate.ts";
import { citedSectionIsThere } from "./rules/cited-section-is-there.ts";
import { drawnLengthIsInTheRack } from "./rules/drawn-length-is-in-the-rack.ts";
import { drillIsLongerThanItsReach } from "./rules/drill-is-longer-than-its-reach.ts";
import { drillReachesTheLongestScrew } from "./rules/drill-reaches-the-longest-screw.ts";
import { drillsShareACoupling } from "./rules/drills-share-a-coupling.ts";
import { driverJoinsItsHandle } from "./rules/driver-joins-its-handle.ts";
import { everyHoleIsLabelledOnce } from "./rules/every-hole-is-labelled-once.ts";
import { everyLengthIsInStock } from "./rules/every-length-is-in-stock.ts";
import { everyPartIsUsed } from "./rules/every-part-is-used.ts";
import { filledHoleIsOnThePlate } from "./rules/filled-hole-is-on-the-plate.ts";
import { fillingStepHasItsChain } from "./rules/filling-step-has-its-chain.ts";
import { finalPassCoversEveryLockingScrew } from "./rules/final-pass-covers-every-locking-screw.ts";
import { gaugeIsLongerThanItsScale } from "./rules/gauge-is-longer-than-its-scale.ts";
import { gaugeReadsTheWholeRack } from "./rules/gauge-reads-the-whole-rack.ts";
import { gaugeReadsWhatThePolicyMeans } from "./rules/gauge-reads-what-the-policy-means.ts";
import { generationIsOne } from "./rules/generation-is-one.ts";
import { glidingDrillLeavesItsGuide } from "./rules/gliding-drill-leaves-its-guide.ts";
import { glidingHoleComesFirst } from "./rules/gliding-hole-comes-first.ts";
import { gtinNamesOnePart } from "./rules/gtin-names-one-part.ts";
import { guardingStepIsNotSkipped } from "./rules/guarding-step-is-not-skipped.ts";
import { guideEndIsNamed } from "./rules/guide-end-is-named.ts";
import { holeIsClearOfTheMiddleLine } from "./rules/hole-is-clear-of-the-middle-line.ts";
import { holeIsNamedForWhatItTakes } from "./rules/hole-is-named-for-what-it-takes.ts";
import { holePartIsNamed } from "./rules/hole-part-is-named.ts";
import { holesAgreeWithTheSchedule } from "./rules/holes-agree-with-the-schedule.ts";
import { holesLieInThePlate } from "./rules/holes-lie-in-the-plate.ts";
import { hooksAreCheckedFirst } from "./rules/hooks-are-checked-first.ts";
import { identityStandsOnEverySheet } from "./rules/identity-stands-on-every-sheet.ts";
import { lastTurnsAreByHand } from "./rules/last-turns-are-by-hand.ts";
import { lengthPolicyCoversItsScrews } from "./rules/length-policy-covers-its-screws.ts";
import { lengthsAreWhole } from "./rules/lengths-are-whole.ts";
import { limiterBelongsToTheScrew } from "./rules/limiter-belongs-to-the-screw.ts";
import { limiterIsInDate } from "./rules/limiter-is-in-date.ts";
import { loadedComesBeforeLag } from "./rules/loaded-comes-before-lag.ts";
import { lookAlikePlatesAreSigned } from "./rules/look-alike-plates-are-signed.ts";
import { lookAlikesLieApart } from "./rules/look-alikes-lie-apart.ts";
import { lostPiecesAreWarnedOf } from "./rules/lost-pieces-are-warned-of.ts";
import { markSaysTheSize } from "./rules/mark-says-the-size.ts";
import { marksAreReadWithTheirSleeve } from "./rules/marks-are-read-with-their-sleeve.ts";
import { mishapSaysWhatIsFetched } from "./rules/mishap-says-what-is-fetched.ts";
import { mishapsAreNumberedThrough } from "./rules/mishaps-are-numbered-through.ts";
import { nearCortexLockingIsAskedFor } from "./rules/near-cortex-locking-is-asked-for.ts";
import { neutralScrewComesBeforeLoaded } from "./rules/neutral-screw-comes-before-loaded.ts";
import { neutralTermIsUsed } from "./rules/neutral-term-is-used.ts";
import { noClaimIsMade } from "./rules/no-claim-is-made.ts";
import { noPartIsACopy } from "./rules/no-part-is-a-copy.ts";
import { numberHasItsSource } from "./rules/number-has-its-source.ts";
import { offsetEndShiftsByTheTravel } from "./rules/offset-end-shifts-by-the-travel.ts";
import { oneSizeTakesOneDriver } from "./rules/one-size-takes-one-driver.ts";
import { orderOfWorkGoesOnWithItsPlate } from "./rules/order-of-work-goes-on-with-its-plate.ts";
import { orderOfWorkIsWhole } from "./rules/order-of-work-is-whole.ts";
import { orientationIsShown } from "./rules/orientation-is-shown.ts";
import { outlineAgreesWithItsWords } from "./rules/outline-agrees-with-its-words.ts";
import { outlineIsSmooth } from "./rules/outline-is-smooth.ts";
import { partFitsItsSlot } from "./rules/part-fits-its-slot.ts";
import { partLiesInATray } from "./rules/part-lies-in-a-tray.ts";
import { partLiesInOneSlot } from "./rules/part-lies-in-one-slot.ts";
import { partsAreOfOneSystem } from "./rules/parts-are-of-one-system.ts";
import { permitHasItsTechnique } from "./rules/permit-has-its-technique.ts";
import { permittedScrewFitsItsHole } from "./rules/permitted-screw-fits-its-hole.ts";
import { pilotDrillHasASpare } from "./rules/pilot-drill-has-a-spare.ts";
import { pilotSuitsTheCore } from "./rules/pilot-suits-the-core.ts";
import { plainScrewsComeBeforeLocking } from "./rules/plain-screws-come-before-locking.ts";
import { planFollowsItsOrderOfWork } from "./rules/plan-follows-its-order-of-work.ts";
import { planHasItsChain } from "./rules/plan-has-its-chain.ts";
import { planHasItsPieces } from "./rules/plan-has-its-pieces.ts";
import { planRunsInOrder } from "./rules/plan-runs-in-order.ts";
import { plateSideMatchesTheCase } from "./rules/plate-side-matches-the-case.ts";
import { rackCoversThePlan } from "./rules/rack-covers-the-plan.ts";
import { removalIsNamed } from "./rules/removal-is-named.ts";
import { requiredCautionsArePrinted } from "./rules/required-cautions-are-printed.ts";
import { ringsTellPilotDrillsApart } from "./rules/rings-tell-pilot-drills-apart.ts";
import { runsOfLengthsRise } from "./rules/runs-of-lengths-rise.ts";
import { screwHasOnePilotDrill } from "./rules/screw-has-one-pilot-drill.ts";
import { screwNumbersAgree } from "./rules/screw-numbers-agree.ts";
import { screwThatCutsNoThreadHasATap } from "./rules/screw-that-cuts-no-thread-has-a-tap.ts";
import { sheetDefers } from "./rules/sheet-defers.ts";
import { sheetFitsOnePage } from "./rules/sheet-fits-one-page.ts";
import { sideAgreesWithItsName } from "./rules/side-agrees-with-its-name.ts";
import { sideIsSaidBeforeThePlateIsHeld } from "./rules/side-is-said-before-the-plate-is-held.ts";
import { sideStandsInWords } from "./rules/side-stands-in-words.ts";
import { sidesCarryDifferentMarks } from "./rules/sides-carry-different-marks.ts";
import { signOffIsDated } from "./rules/sign-off-is-dated.ts";
import { signOffMeetsItsFinding } from "./rules/sign-off-meets-its-finding.ts";
import { siteHoldsTheCase } from "./rules/site-holds-the-case.ts";
import { siteListsEachTrayOnce } from "./rules/site-lists-each-tray-once.ts";
import { sizeChangeIsTold } from "./rules/size-change-is-told.ts";
import { sizeHasItsNoun } from "./rules/size-has-its-noun.ts";
import { sleeveGuidesTheDrill } from "./rules/sleeve-guides-the-drill.ts";
import { sleeveIsOutBeforeMeasuring } from "./rules/sleeve-is-out-before-measuring.ts";
import { sleeveIsTurnedInSquare } from "./rules/sleeve-is-turned-in-square.ts";
import { slotsDoNotOverlap } from "./rules/slots-do-not-overlap.ts";
import { sourceIsCurrent } from "./rules/source-is-current.ts";
import { sourceIsOfItsOwnSystem } from "./rules/source-is-of-its-own-system.ts";
import { statedLengthIsTheOutlinesLength } from "./rules/stated-length-is-the-outlines-length.ts";
import { stepAsksForItsInstrument } from "./rules/step-asks-for-its-instrument.ts";
import { stepCautionIsRequired } from "./rules/step-caution-is-required.ts";
import { stepSaysHowDeep } from "./rules/step-says-how-deep.ts";
import { stepSaysWhatItFills } from "./rules/step-says-what-it-fills.ts";
import { stepsStandInWorkingOrder } from "./rules/steps-stand-in-working-order.ts";
import { stiffPlateIsTheThicker } from "./rules/stiff-plate-is-the-thicker.ts";
import { surgeonDecidesWhereAsked } from "./rules/surgeon-decides-where-asked.ts";
import { tapCutsAScrewsThread } from "./rules/tap-cuts-a-screws-thread.ts";
import { tapIsAskedFor } from "./rules/tap-is-asked-for.ts";
import { techniqueCarriesItsCautions } from "./rules/technique-carries-its-cautions.ts";
import { techniqueHasEveryStep } from "./rules/technique-has-every-step.ts";
import { techniqueIsToldApartAloud } from "./rules/technique-is-told-apart-aloud.ts";
import { trapsOfOneOpeningAreNamed } from "./rules/traps-of-one-opening-are-named.ts";
import { trayCanBeLifted } from "./rules/tray-can-be-lifted.ts";
import { trayHoldsEveryInstrument } from "./rules/tray-holds-every-instrument.ts";
import { trayTotalAddsUp } from "./rules/tray-total-adds-up.ts";
import { wirePassesItsHole } from "./rules/wire-passes-its-hole.ts";
import { wiresAreCountedOut } from "./rules/wires-are-counted-out.ts";

/** Every rule, one a file in rules/, in the order of their names. */
export const rules: readonly Rule[] = [
  alikeHolesPermitAlike,
  bendSparesTheThread,
  caseNamesNoPerson,
  caseSheetExpires,
  cautionStandsAtItsAct,
  chainHasOneCandidate,
  citedSectionIsThere,
  drawnLengthIsInTheRack,
  drillIsLongerThanItsReach,
  drillReachesTheLongestScrew,
  drillsShareACoupling,
  driverJoinsItsHandle,
  everyHoleIsLabelledOnce,
  everyLengthIsInStock,
  everyPartIsUsed,
  filledHoleIsOnThePlate,
  fillingStepHasItsChain,
  finalPassCoversEveryLockingScrew,
  gaugeIsLongerThanItsScale,
  gaugeReadsTheWholeRack,
  gaugeReadsWhatThePolicyMeans,
  generationIsOne,
  glidingDrillLeavesItsGuide,
  glidingHoleComesFirst,
  gtinNamesOnePart,
  guardingStepIsNotSkipped,
  guideEndIsNamed,
  holeIsClearOfTheMiddleLine,
  holeIsNamedForWhatItTakes,
  holePartIsNamed,
  holesAgreeWithTheSchedule,
  holesLieInThePlate,
  hooksAreCheckedFirst,
  identityStandsOnEverySheet,
  lastTurnsAreByHand,
  lengthPolicyCoversItsScrews,
  lengthsAreWhole,
  limiterBelongsToTheScrew,
  limiterIsInDate,
  loadedComesBeforeLag,
  lookAlikePlatesAreSigned,
  lookAlikesLieApart,
  lostPiecesAreWarnedOf,
  markSaysTheSize,
  marksAreReadWithTheirSleeve,
  mishapSaysWhatIsFetched,
  mishapsAreNumberedThrough,
  nearCortexLockingIsAskedFor,
  neutralScrewComesBeforeLoaded,
  neutralTermIsUsed,
  noClaimIsMade,
  noPartIsACopy,
  numberHasItsSource,
  offsetEndShiftsByTheTravel,
  oneSizeTakesOneDriver,
  orderOfWorkGoesOnWithItsPlate,
  orderOfWorkIsWhole,
  orientationIsShown,
  outlineAgreesWithItsWords,
  outlineIsSmooth,
  partFitsItsSlot,
  partLiesInATray,
  partLiesInOneSlot,
  partsAreOfOneSystem,
  permitHasItsTechnique,
  permittedScrewFitsItsHole,
  pilotDrillHasASpare,
  pilotSuitsTheCore,
  plainScrewsComeBeforeLocking,
  planFollowsItsOrderOfWork,
  planHasItsChain,
  planHasItsPieces,
  planRunsInOrder,
  plateSideMatchesTheCase,
  rackCoversThePlan,
  removalIsNamed,
  requiredCautionsArePrinted,
  ringsTellPilotDrillsApart,
  runsOfLengthsRise,
  screwHasOnePilotDrill,
  screwNumbersAgree,
  screwThatCutsNoThreadHasATap,
  sheetDefers,
  sheetFitsOnePage,
  sideAgreesWithItsName,
  sideIsSaidBeforeThePlateIsHeld,
  sideStandsInWords,
  sidesCarryDifferentMarks,
  signOffIsDated,
  signOffMeetsItsFinding,
  siteHoldsTheCase,
  siteListsEachTrayOnce,
  sizeChangeIsTold,
  sizeHasItsNoun,
  sleeveGuidesTheDrill,
  sleeveIsOutBeforeMeasuring,
  sleeveIsTurnedInSquare,
  slotsDoNotOverlap,
  sourceIsCurrent,
  sourceIsOfItsOwnSystem,
  statedLengthIsTheOutlinesLength,
  stepAsksForItsInstrument,
  stepCautionIsRequired,
  stepSaysHowDeep,
  stepSaysWhatItFills,
  stepsStandInWorkingOrder,
  stiffPlateIsTheThicker,
  surgeonDecidesWhereAsked,
  tapCutsAScrewsThread,
  tapIsAskedFor,
  techniqueCarriesItsCautions,
  techniqueHasEveryStep,
  techniqueIsToldApartAloud,
  trapsOfOneOpeningAreNamed,
  trayCanBeLifted,
  trayHoldsEveryInstrument,
  trayTotalAddsUp,
  wirePassesItsHole,
  wiresAreCountedOut,
];

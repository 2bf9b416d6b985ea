import {answerWithoutPosting} from './answer-without-posting.ts';
import {brokenCrossReference} from './broken-cross-reference.ts';
import {citationWithoutLocator} from './citation-without-locator.ts';
import {clippedSourceNotCited} from './clipped-source-not-cited.ts';
import {coarsePhoto} from './coarse-photo.ts';
import {datesOutOfOrder} from './dates-out-of-order.ts';
import type {Rule} from './define-rule.ts';
import {dependentSources} from './dependent-sources.ts';
import {duplicateItem} from './duplicate-item.ts';
import {futureDate} from './future-date.ts';
import {gaugeOutsideYarnWeight} from './gauge-outside-yarn-weight.ts';
import {gaugeSpread} from './gauge-spread.ts';
import {headingJump} from './heading-jump.ts';
import {incompleteSource} from './incomplete-source.ts';
import {itemWithoutRequirement} from './item-without-requirement.ts';
import {largerThanPaper} from './larger-than-paper.ts';
import {leafNeverPrinted} from './leaf-never-printed.ts';
import {leafWithoutFingerprint} from './leaf-without-fingerprint.ts';
import {locatorOutsideSource} from './locator-outside-source.ts';
import {missingField} from './missing-field.ts';
import {missingPatternPart} from './missing-pattern-part.ts';
import {missingPhoto} from './missing-photo.ts';
import {openAnswer} from './open-answer.ts';
import {patternWithoutRows} from './pattern-without-rows.ts';
import {photoWithoutDescription} from './photo-without-description.ts';
import {pieceTooSmall} from './piece-too-small.ts';
import {probableDuplicateSource} from './probable-duplicate-source.ts';
import {quotationWithoutCitation} from './quotation-without-citation.ts';
import {rawHtml} from './raw-html.ts';
import {referenceListByHand} from './reference-list-by-hand.ts';
import {requirementWithoutItem} from './requirement-without-item.ts';
import {reviewWithoutSource} from './review-without-source.ts';
import {reworkBeforeAnswer} from './rework-before-answer.ts';
import {reworkWithoutAnswer} from './rework-without-answer.ts';
import {rowCount} from './row-count.ts';
import {rowMultiple} from './row-multiple.ts';
import {secondAnswer} from './second-answer.ts';
import {sentItemGone} from './sent-item-gone.ts';
import {sourceNeverCited} from './source-never-cited.ts';
import {sourceWithoutAccessDate} from './source-without-access-date.ts';
import {stubText} from './stub-text.ts';
import {styleWithoutPage} from './style-without-page.ts';
import {techniqueOnlyOnline} from './technique-only-online.ts';
import {techniqueWithoutCitation} from './technique-without-citation.ts';
import {tiedItemUnfinished} from './tied-item-unfinished.ts';
import {tooFewBooks} from './too-few-books.ts';
import {tooFewCitations} from './too-few-citations.ts';
import {tooFewGaugeCounts} from './too-few-gauge-counts.ts';
import {tooFewPhotos} from './too-few-photos.ts';
import {tooFewWords} from './too-few-words.ts';
import {tooManyWords} from './too-many-words.ts';
import {tooMuchQuoted} from './too-much-quoted.ts';
import {unevenEdges} from './uneven-edges.ts';
import {unexplainedAbbreviation} from './unexplained-abbreviation.ts';
import {unfinishedItem} from './unfinished-item.ts';
import {unknownNeedleSize} from './unknown-needle-size.ts';
import {unknownRuleSetting} from './unknown-rule-setting.ts';
import {unknownSource} from './unknown-source.ts';
import {unmeasuredSize} from './unmeasured-size.ts';
import {unreadChart} from './unread-chart.ts';
import {unreadRow} from './unread-row.ts';
import {unreadablePhoto} from './unreadable-photo.ts';
import {unusedPhoto} from './unused-photo.ts';
import {wrongIdentifier} from './wrong-identifier.ts';
import {wrongWebAddress} from './wrong-web-address.ts';

/** Laws that stand on their own, in the order in which `explain` lists them. */
const laws: readonly Rule[] = [
  // Syllabus and items: what goes into the box at all.
  requirementWithoutItem, // A missing item comes back, whatever the others are like.
  itemWithoutRequirement, // The same slip seen from the other side.
  duplicateItem, // Only one of two files would be printed.
  unfinishedItem, // Nothing on paper would say that an item is not ready.
  tiedItemUnfinished, // An answer must not describe knitting that does not exist yet.

  // The fields of an item.
  missingField, // The sheet and the tag print these fields.
  stubText, // What was meant for the candidate must not reach the assessors.
  datesOutOfOrder, // Dates that run backwards discredit the whole record.
  futureDate, // A slip of the year.

  // References.
  unknownSource, // A citation that leads nowhere cannot be printed.
  locatorOutsideSource, // The assessor turns the page up and finds nothing.
  citationWithoutLocator, // A whole book is no reference for one stitch.
  techniqueWithoutCitation, // Each method must be researched.
  tooFewCitations, // The certificate asks for research.
  tooFewBooks, // Books can be found again.
  dependentSources, // Two books of one author are one opinion.
  techniqueOnlyOnline, // The book may stand under another technique.
  reviewWithoutSource, // The head of a review is made from its source.
  wrongIdentifier, // One wrong digit leads to another book.
  wrongWebAddress, // It is printed to be typed.
  sourceWithoutAccessDate, // A page on the web changes.
  incompleteSource, // A reference with a gap cannot be ordered.
  probableDuplicateSource, // One book would be printed as two.
  styleWithoutPage, // No page that was noted would reach the assessor.
  clippedSourceNotCited, // A place that was found and forgotten.
  sourceNeverCited, // Often a citation that was forgotten.

  // Texts.
  tooFewWords, // A short answer is taken as half an answer.
  tooManyWords, // Assessors stop reading at the limit.
  quotationWithoutCitation, // Another's words pass for one's own.
  tooMuchQuoted, // The candidate is examined, not the books.
  referenceListByHand, // Two lists beside each other that differ.
  headingJump, // Bookmarks and numbers follow the levels.
  brokenCrossReference, // It would print as a gap.
  rawHtml, // It would not be printed as meant.
  patternWithoutRows, // Only written rows are counted and printed as instructions.
  missingPatternPart, // What a pattern has besides its rows.

  // Written rows, in the order in which one fault hides the next.
  unreadRow, // What cannot be read cannot be counted.
  rowCount, // A row that does not add up is what most patterns come back for.
  rowMultiple, // Others work the stitch at another width.
  unexplainedAbbreviation, // What the reader of the rows looks up.
  unreadChart, // A sign without a meaning would be a hole in the drawing.

  // Knitting.
  unmeasuredSize, // What was not measured cannot be checked.
  pieceTooSmall, // The first thing the assessors lay a ruler on.
  unevenEdges, // Uneven tension shows at the edges.
  tooFewGaugeCounts, // One count says nothing about evenness.
  gaugeSpread, // A mean is worth only what its counts are worth.
  gaugeOutsideYarnWeight, // A wrong weight, or a count over the wrong length.
  unknownNeedleSize, // Two systems of numbers run in opposite directions.

  // Photos.
  missingPhoto, // A frame without its picture.
  unreadablePhoto, // A blank frame.
  coarsePhoto, // Stitches that blur show nothing.
  photoWithoutDescription, // The caption says which side is seen.
  tooFewPhotos, // The syllabus counts them.
  unusedPhoto, // Taken for a sheet and forgotten.

  // Rounds.
  reworkWithoutAnswer, // The resubmission page prints the answer beside the remark.
  secondAnswer, // Which of two holds nobody can tell.
  answerWithoutPosting, // A slip in the round would let an item pass unseen.
  openAnswer, // The next round waits for it.
  sentItemGone, // Its answer would be lost.
  reworkBeforeAnswer, // Rework without a remark has nothing to stand beside.

  // What is printed beside the leaves.
  largerThanPaper, // A spoilt sheet of labels, or a strip cut off.

  // The print ledger.
  leafNeverPrinted, // An old leaf would stay in the binder.
  leafWithoutFingerprint, // It is printed anew without need.
];

/** Every rule. Ids are permanent: the id of a rule that is taken out stays here as a comment. */
export const rules: readonly Rule[] = [
  ...laws,
  unknownRuleSetting(laws), // It knows the ids of all the others.
];

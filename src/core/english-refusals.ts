/** Refusals in English: `weightNow must be at least 85.2, the dry matter; got 80`, lower case, no full stop. */
import type { Being, Doing, Finding, Hint, Place, Reason, Refusal, Size } from "./refusals";
import { quoted, shown, shownBound, span } from "./shown";

/** What an argument is called: by its name, or by the label that a form shows. */
export type Named = (argument: string) => string;

const itself: Named = (argument) => argument;

/** Why a cell holds an error, as the cell shows it. */
export function englishReason(reason: Reason, named: Named = itself): string {
  if (typeof reason === "string") return reason;
  return "kind" in reason ? `this answer could not be worked out (${reason.problem})` : englishRefusal(reason, named);
}

export function englishRefusal(refusal: Refusal, named: Named = itself): string {
  const { argument, must, found, hint, place, question } = refusal;
  const demand = "be" in must ? `be ${englishBeing(must.be, named)}` : doing(must.do, named);
  const behind = [
    hint === undefined ? "" : ` (${englishHint(hint)})`,
    place === undefined ? "" : ` ${placeText(place)}`,
    question === undefined ? "" : ` (${question})`,
  ];
  return `${named(argument)} must ${demand}; ${finding(found, named)}${behind.join("")}`;
}

/** What an argument must be, as a function's page says that it accepts. */
export function englishBeing(being: Being, named: Named = itself): string {
  if (typeof being === "string") return being;
  switch (being.kind) {
    case "word":
      return `one of ${being.words.map((word) => `"${word}"`).join(", ")}`;
    case "smooth":
      return `one of ${being.ids.join(", ")}, whose result is one smooth number of single numbers`;
    case "error of":
      return `${englishBeing(being.being, named)} for ${named(being.name)}`;
    case "at most moisture": {
      const loss = being.asLossOf === undefined ? "" : `, as a loss of ${being.asLossOf}`;
      return `at most ${shown(being.moisture)}, the moisture of the leaf${loss}`;
    }
    case "limit":
      return `${being.is} ${shownBound(being.limit, being.is)}, ${being.what}`;
    case "at most steps":
      return `at most ${shown(being.weight)}, a thousand million steps of ${shown(being.readability)}`;
    case "whole steps":
      return `a whole number of steps of ${shown(being.readability)}`;
    case "at least":
      return `at least ${shown(being.least)}, the ${named(being.argument)}`;
    case "at most":
      return `at most ${shown(being.most)}, the ${named(being.argument)}`;
    case "above dry matter left":
      return `above the dry matter that the other rows leave for ${quoted(being.stage)}, ${shown(being.weight)}`;
    case "few charges":
      return `large enough to make ${being.most} charges at most of ${shown(being.weight)}, the weight`;
    case "between breaks":
      return `at most ${span(being.seconds)}, the time between two breaks`;
    case "few turns":
      return `long enough for ${being.most} turns at most`;
    case "shorter than":
      return `shorter than the duration, ${span(being.seconds)}, for a turn before the end`;
    case "few stages":
      return `${being.most} at most, those of one lot`;
    case "few arguments":
      return `${being.most} at most, as many as ${being.id} takes`;
    case "within times":
      return `within ${being.times} times of each other in dry matter`;
    case "one for all groups":
      return `one number for all groups, or have ${named(being.names)} beside them`;
    case "given with":
      return `given together with ${named(being.argument)}`;
  }
}

function doing(what: Doing, named: Named): string {
  if (typeof what === "string") return what;
  switch (what.kind) {
    case "few arguments":
      return `have at most ${what.most} arguments`;
    case "rows as":
      return `have as many rows as ${named(what.argument)}`;
    case "size of":
      return `have the size of ${named(what.argument)}`;
    case "lots":
      return `hold at least ${what.least} finished lots`;
    case "area of":
      return `hold an area of ${quoted(String(what.group))}`;
    case "agree within":
      return `agree within ${shown(what.limit)}`;
    case "room to change":
      return `leave ${named(what.argument)} room to change, on one side at least`;
  }
}

function finding(found: Finding, named: Named): string {
  if (typeof found === "string") return found;
  switch (found.kind) {
    case "value":
      return `got ${shown(found.value)}`;
    case "value at":
      return `got ${shown(found.value)} at ${quoted(found.stage)}`;
    case "time":
      return `got ${span(found.seconds)}`;
    case "turns":
      return `got ${span(found.interval)}, which makes ${found.turns} in ${span(found.duration)}`;
    case "cells":
      return `got ${size(found.size)} cells`;
    case "sizes":
      return `got ${size(found.one)} and ${size(found.other)} cells`;
    case "lengths":
      return `got ${found.one} and ${found.other}`;
    case "arguments":
      return `got ${found.count} in ${found.signature}`;
    case "unlike": {
      const [one, other] = [found.one, found.other];
      return `got ${quoted(one.stage)} at ${shown(one.error)} and ${quoted(other.stage)} at ${shown(other.error)}`;
    }
    case "spread":
      return `got a spread of ${shown(found.spread)}`;
    case "goes":
      return `place ${found.place} goes from ${shown(found.from)} to ${shown(found.to)}`;
    case "areas":
      return `got ${found.count} areas without names`;
    case "lots":
      return found.leftOut === undefined
        ? `got ${found.count}`
        : `got ${found.count} (rows left out: ${found.leftOut.rows}, the first because ${englishRefusal(found.leftOut.first, named)})`;
    case "put at":
      return `the balance puts ${quoted(found.stage)} at ${shown(found.value)}`;
    case "misfit":
      return `${quoted(found.stage)} at ${shown(found.weight)} does not belong, ${shown(found.fitting)} would fit`;
    case "neither":
      return `${quoted(found.stage)} has neither`;
    case "unbalanced":
      return `${quoted(found.stage)} and an exact row before it do not balance`;
    case "open balance":
      return `balance ${found.row} cannot close`;
    case "rounds":
      return `no fit was found in ${found.rounds} rounds`;
    case "blank row":
      return `row ${found.row} is blank`;
    case "unnamed row":
      return `row ${found.row} is not`;
    case "blank error":
      return `the one of ${named(found.argument)} is blank`;
    case "twice":
      return `${quoted(found.name)} stands in rows ${found.rows[0]} and ${found.rows[1]}`;
    case "rise":
      return `step ${found.step} goes from ${shown(found.from)} to ${shown(found.to)}, begin a new table for leaf that was wetted`;
  }
}

/** What may be the matter. */
export const englishHint = (hint: Hint): string => {
  if (typeof hint === "string") return hint;
  const [one, other] = hint.weights.map(shown);
  return other === undefined ? `the nearest is ${one}` : `the nearest are ${one} and ${other}`;
};

const placeText = (place: Place): string =>
  place.in === "step" ? `in step ${place.number}` : `in place ${place.number} of the list`;

const size = ({ rows, columns }: Size): string => `${rows} × ${columns}`;

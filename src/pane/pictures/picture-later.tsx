import type { FunctionSpec } from "../../core/define";
import { isGiven, type JobAnswer } from "../../jobs/job-answer";
import { Later, Part } from "../later";

/** The library that draws is as large as all the rest of a page, and comes with the first picture. */
export const answerPicture = new Part(() => import("./answer-picture").then(({ AnswerPicture }) => AnswerPicture));

interface PicturesProps {
  readonly answers: readonly JobAnswer[] | undefined;
  /** What no charge may pass. */
  readonly limit: number | undefined;
  readonly unit: string;
}

/** The pictures of those answers of a job that have one. */
export function Pictures({ answers, limit, unit }: PicturesProps) {
  return answers
    ?.filter((answer) => hasPicture(answer.spec) && isGiven(answer))
    .map(({ spec, given, grid }) => (
      <Later key={spec.id} part={answerPicture} given={{ spec, given, rows: grid, limit, unit }} />
    ));
}

const hasPicture = ({ result }: FunctionSpec): boolean => "picture" in result && result.picture !== undefined;

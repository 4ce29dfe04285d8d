/** The steps that FINISHEDBAND and FINISHEDCHECK share. */
import { looseWeight, share, weight, weightError } from "../quantities";
import { inserted, percent, step } from "../working";
import { finishedLimits, type LotDetails } from "./finished-limits";

const highSymbols = "P₀ × (1 − lowLoss) × (1 + 2 × r)";
const lowSymbols = "P₀ × (1 − highLoss) × (1 − 2 × r)";

/** Dry matter that went on, the weight at no loss, the errors, and the limits: as FINISHEDBAND states them. */
export function stepsToLimits(F: number, Mf: number, Mp: number, ...details: LotDetails) {
  const [S, removedMoisture, , , uW, uMf, uMp] = details;
  const Ms = removedMoisture ?? Mf;
  const N = F * (1 - Mf) - S * (1 - Ms);
  const noLoss = N / (1 - Mp);
  const g = removedMoisture === undefined ? F - S : F;
  const uS = S === 0 ? 0 : uW;
  const uN = Math.hypot((1 - Mf) * uW, (1 - Ms) * uS, g * uMf);
  return [
    step(
      "dry matter that went on, without what was taken out",
      "F × (1 − Mf) − S × (1 − Ms)",
      { F, Mf: percent(Mf), S, Ms: percent(Ms) },
      N,
      looseWeight,
    ),
    step("finished weight at no loss", "N / (1 − Mp)", { N, Mp: percent(Mp) }, noLoss, weight),
    step(
      "error of the dry matter, from the errors of weight and fresh moisture",
      "√(((1 − Mf) × uW)² + ((1 − Ms) × uS)² + (g × uMf)²)",
      { Mf: percent(Mf), uW, Ms: percent(Ms), uS, g, uMf },
      uN,
      weightError,
    ),
    step(
      "error of the finished weight, as a share",
      "√((uN / N)² + (uMp / (1 − Mp))² + (uW / P₀)²)",
      { uN, N, uMp, Mp: percent(Mp), uW, "P₀": noLoss },
      relativeError(F, Mf, Mp, ...details),
      share,
    ),
    step(
      "most that the tea can honestly weigh",
      highSymbols,
      highNumbers(F, Mf, Mp, ...details),
      finishedLimits(F, Mf, Mp, ...details).high,
      weight,
    ),
  ];
}

/** Both limits in one line. */
export const limitsSymbols = `low = ${lowSymbols}; high = ${highSymbols}`;

export function limitsInLine(F: number, Mf: number, Mp: number, ...details: LotDetails): string {
  const highLoss = details[3];
  const numbers = highNumbers(F, Mf, Mp, ...details);
  const high = `high = ${inserted(highSymbols, numbers)}`;
  if (highLoss === undefined) return high;
  return `low = ${inserted(lowSymbols, { ...numbers, highLoss: percent(highLoss) })}; ${high}`;
}

function highNumbers(F: number, Mf: number, Mp: number, ...details: LotDetails) {
  const { atNoLoss } = finishedLimits(F, Mf, Mp, ...details);
  return { "P₀": atNoLoss, lowLoss: percent(details[2]), r: percent(relativeError(F, Mf, Mp, ...details)) };
}

/** Two of them lie between the weight at no loss and the limit. */
function relativeError(F: number, Mf: number, Mp: number, ...details: LotDetails): number {
  const { atNoLoss, limit } = finishedLimits(F, Mf, Mp, ...details);
  return (limit / atNoLoss - 1) / 2;
}

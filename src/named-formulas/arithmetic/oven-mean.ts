import { ovenMean } from "../../core/moisture/oven-mean";
import { rangeQuantile } from "../../core/numeric/normal-range";
import { arithmetic } from "../arithmetic";
import { rowOf } from "../words";

/** Of 2, 3, … readings; beyond twenty the last one stays. As few digits as a formula may hold: the factor is their ratio. */
const quantiles = Array.from({ length: 19 }, (_, place) => rangeQuantile(place + 2));

export const ovenMeanArithmetic = arithmetic(
  ovenMean,
  `LET(readings,_TEA_ROWS(moistures),IF(readings<2,#N/A,LET(allowed,limit*(INDEX(${rowOf(quantiles)},1,MIN(readings-1,${quantiles.length}))/${quantiles[0]}),IF(_TEA_ABOVE(MAX(moistures)-MIN(moistures),allowed),#N/A,SUM(moistures)/readings))))`,
);

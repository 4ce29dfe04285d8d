import { ovenMean } from "../../core/moisture/oven-mean";
import { rangeFactor } from "../../core/numeric/normal-range";
import { arithmetic } from "../arithmetic";
import { rowOf } from "../words";

/** Of 2, 3, … readings; beyond twenty the factor stays. */
const factors = Array.from({ length: 19 }, (_, place) => rangeFactor(place + 2));

export const ovenMeanArithmetic = arithmetic(
  ovenMean,
  `LET(readings,_TEA_ROWS(moistures),IF(readings<2,#N/A,LET(allowed,limit*INDEX(${rowOf(factors)},1,MIN(readings-1,${factors.length})),IF(_TEA_ABOVE(MAX(moistures)-MIN(moistures),allowed),#N/A,SUM(moistures)/readings))))`,
);

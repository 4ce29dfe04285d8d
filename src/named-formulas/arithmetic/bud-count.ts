import { budCount } from "../../core/yields/bud-count";
import { arithmetic } from "../arithmetic";

const scatter =
  "SQRT(SUM(MAP(budCounts,sampleWeights,LAMBDA(counted,weighed,(weighed-one*counted)^2/counted)))/(samples-1))";

const end = 'IF(samples=1,"",weightWanted/(one+margin))';
const highEnd = 'IF(samples=1,"",IF(margin<one,weightWanted/(one-margin),#N/A))';
const time = 'IF(pickingRate="","",weightWanted/one/pickingRate/24)';

export const budCountArithmetic = arithmetic(
  budCount,
  `LET(samples,_TEA_ROWS(budCounts),one,SUM(sampleWeights)/SUM(budCounts),margin,IF(samples=1,0,_TEA_MARGIN(${scatter}/SQRT(SUM(budCounts)),confidence,samples)),CHOOSE(column,100*one,${end},weightWanted/one,${highEnd},${time}))`,
);

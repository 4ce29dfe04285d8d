import { chargeCount, mostCharges } from "../../core/charges/charge-count";
import { arithmetic } from "../arithmetic";
import { literal } from "../words";

const most = literal(mostCharges);

/** The number of equal charges whose weight is nearest to the pan load; a tie takes more pans, which hold less. */
const wanted =
  "LET(fewer,INT(weight/panLoad),IF(fewer=0,1,LET(more,fewer+1,IF(_TEA_ABOVE((panLoad-weight/more)/panLoad,(weight/fewer-panLoad)/panLoad),fewer,more))))";

/** The least number whose charges stay within maxLoad. */
const least = `LET(loads,IF(readability="",weight/maxLoad,steps/_TEA_STEPSWITHIN(maxLoad,readability)),nearest,ROUND(loads,0),IF(_TEA_ABOVE(loads,nearest),ROUNDUP(loads,0),nearest))`;

const count = `LET(steps,IF(readability="",0,_TEA_STEPS(weight,readability)),wanted,${wanted},IF(ISERROR(steps),steps,IF(wanted>${most},#VALUE!,IF(maxLoad="",wanted,LET(fewest,${least},IF(fewest>${most},#VALUE!,MAX(wanted,fewest)))))))`;

export const chargeCountArithmetic = arithmetic(
  chargeCount,
  `IF(_TEA_OVER(readability,panLoad),#VALUE!,IF(_TEA_OVER(panLoad,maxLoad),#VALUE!,${count}))`,
);

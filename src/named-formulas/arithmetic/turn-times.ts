import { secondsInDay } from "../../core/days";
import { firstDate } from "../../core/time/clock-times";
import { longestDays, mostTurns, shortestInterval, turnTimes } from "../../core/time/turn-times";
import { arithmetic } from "../arithmetic";

const turns = `LET(turns,ROUNDUP(whole/every,0)-1,IF(turns<1,#N/A,IF(turns>${mostTurns},#VALUE!,MAKEARRAY(turns,1,LAMBDA(place,across,(first+place*every)/${secondsInDay})))))`;

export const turnTimesArithmetic = arithmetic(
  turnTimes,
  `IF((start>1)*(start<${firstDate}),#VALUE!,IF(duration>${longestDays},#VALUE!,LET(first,ROUND(start*${secondsInDay},0),whole,ROUND(duration*${secondsInDay},0),every,ROUND(interval*${secondsInDay},0),IF(every<${shortestInterval},#VALUE!,${turns}))))`,
);

import { largeLot, noise, packCheck, sampleConfidence } from "../../core/packing/pack-check";
import { arithmetic } from "../arithmetic";
import { literal, said } from "../words";

const shortBy = (allowed: string): string =>
  `SUM(MAP(netWeights,LAMBDA(net,IF(nominal-net>${allowed}+${literal(noise)}*nominal,1,0))))`;

/** What the reference test allows the mean of a sample; its probability is one-sided. */
const limit = `IF(sampled,IF(weighed<2,#N/A,nominal-_TEA_MARGIN(scatter/SQRT(weighed),2*${literal(sampleConfidence)}-1,weighed)),nominal)`;

const verdict = `IF(ISERROR(limit),limit,IF(farShort>0,${said("a package short by more than twice the tolerance")},IF(mean<limit-${literal(noise)}*nominal,${said("mean below the limit")},IF(short/weighed>shortShare,${said("too many short by more than the tolerance")},${said("agrees")}))))`;

export const packCheckArithmetic = arithmetic(
  packCheck,
  `LET(weighed,_TEA_ROWS(netWeights),lot,IF(packages="",0,packages),IF((packages<>"")*(lot<weighed),#VALUE!,LET(mean,_TEA_MEAN(netWeights),scatter,_TEA_SCATTER(netWeights),sampled,(lot>=${largeLot})*(lot>weighed)=1,limit,${limit},short,${shortBy("tolerance")},farShort,${shortBy("2*tolerance")},CHOOSE(column,${verdict},mean,limit,IF(weighed<2,"",scatter),short,farShort))))`,
);

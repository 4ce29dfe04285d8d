import type { Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  type ErrorType,
  ErrorValueObject,
  FunctionType,
  type IFunctionInfo,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { bind } from "../cells/bind";
import { CellError, type CellValue } from "../cells/values";
import { wrongCount } from "../cells/wrong-count";
import type { FunctionSpec, Parameter } from "../core/define";
import { formula, meaning, plainName, typed, whenBlank } from "../core/describe";
import type { Entry } from "../core/entry";
import { namespace } from "../core/namespace";
import type { ErrorMessages } from "./error-messages";

type Executor = [new (name: string) => BaseFunction, string];

/**
 * The functions of the catalogue as the engine runs them: its configuration `formula.function`. Those in `byName`, by id,
 * also answer to the name of their named formula: the engine has no LAMBDA in names, and it is the same function.
 */
export function executorsFor(
  catalogue: readonly Entry[],
  errors: ErrorMessages,
  byName: ReadonlySet<string> = new Set(),
): Executor[] {
  return catalogue.flatMap(({ spec }): Executor[] => {
    const runs = executor(spec, errors);
    return [
      [runs, `${namespace}.${spec.id}`],
      ...(byName.has(spec.id) ? [[runs, plainName(spec.id)] as Executor] : []),
    ];
  });
}

/** What the grid shows while a formula is typed: the engine's configuration `formula.description`. */
export function descriptionsFor(catalogue: readonly Entry[]): IFunctionInfo[] {
  return catalogue.map(({ spec, page }) => {
    const given = page.examples[0]?.given ?? [];
    return {
      functionName: `${namespace}.${spec.id}`,
      functionType: FunctionType.User,
      abstract: page.summary,
      description: `${page.summary} Example: ${formula(spec, given)}`,
      functionParameter: spec.parameters.map((parameter, index) => ({
        name: parameter.name,
        detail: help(parameter, page.parameters),
        example: typed(given[index] ?? parameter.fallback ?? null),
        require: parameter.optional ? 0 : 1,
        repeat: 0,
      })),
    };
  });
}

function help(parameter: Parameter, meanings: Readonly<Record<string, string>>): string {
  const text = meaning(parameter, meanings);
  return parameter.optional ? `${text} (${whenBlank(parameter)})` : text;
}

function executor(spec: FunctionSpec, errors: ErrorMessages): new (name: string) => BaseFunction {
  const call = bind(spec);

  return class extends BaseFunction {
    // The engine answers a wrong number of arguments with a bare #N/A; we say what is missing.
    override minParams = 0;
    override maxParams = 255;
    override needsFormulaDataModel = true;

    /** Text in quotes stays text: the engine would make a number of "50%" and a date of "1/2". */
    override isArgumentsIgnoreNumberPattern(): boolean {
      return true;
    }

    override calculate(...given: BaseValueObject[]): BaseValueObject {
      const refusal = wrongCount(spec, given.length);
      const answer = refusal ? [[refusal]] : call(...given.map((value) => givenArgument(value, this.#isTypedNumber)));
      errors.record(this.subUnitId ?? "", this.row, this.column, answer);
      const single = answer.length === 1 && answer[0]?.length === 1 ? answer[0][0] : undefined;
      if (single !== undefined) return valueObject(single);
      return ArrayValueObject.create({
        calculateValueList: answer.map((row) => row.map(valueObject)),
        rowCount: answer.length,
        columnCount: answer[0]?.length ?? 0,
        unitId: this.unitId ?? "",
        sheetId: this.subUnitId ?? "",
        row: this.row,
        column: this.column,
      });
    }

    /** The engine takes 0.50, 100.0 and .5 in a formula for text: only the formula tells them from text in quotes. */
    #isTypedNumber = (text: string): boolean => {
      const model = this._formulaDataModel;
      const formula = model?.getFormulaStringByCell(this.row, this.column, this.subUnitId ?? "", this.unitId ?? "");
      return formula ? hasNumber(formula, text) : false;
    };
  };
}

/** An argument as a cell function takes it: a constant, rows of constants, or null for a blank. */
export function givenArgument(value: BaseValueObject, isTypedNumber: (text: string) => boolean): unknown {
  const constant = (single: Nullable<BaseValueObject>): CellValue | null => {
    const given = constantOf(single);
    return typeof given === "string" && isNumeric(given) && isTypedNumber(given) ? Number(given) : given;
  };
  return value.isArray() ? value.getArrayValue().map((row) => row.map((cell) => constant(cell))) : constant(value);
}

/** The engine keeps the words of an error that one function hands to the next, and not the reason. */
const ours = new WeakMap<ErrorValueObject, CellError>();

function constantOf(value: Nullable<BaseValueObject>): CellValue | null {
  if (!value || value.isNull()) return null;
  if (!value.isError()) return value.getValue();
  const error = value as ErrorValueObject;
  // An error of ours that comes straight from another function still has its message.
  return ours.get(error) ?? new CellError(error.getErrorType(), error.getErrorContent());
}

const isNumeric = (text: string): boolean => text.trim() !== "" && Number.isFinite(Number(text));

/** Whether the formula has this text as a number of its own: not in quotes, and not as part of another word. */
export function hasNumber(formula: string, text: string): boolean {
  const number = text.trim();
  const unquoted = formula.replace(/"(?:[^"]|"")*"/g, '""');
  return new RegExp(`(?<![\\w.])${number.replace(/[.+]/g, "\\$&")}(?![\\w.])`).test(unquoted);
}

function valueObject(value: CellValue): BaseValueObject {
  if (typeof value === "number") return NumberValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (typeof value === "string") return StringValueObject.create(value);
  const error = ErrorValueObject.create(value.code as ErrorType, value.message);
  if (value.reason !== undefined) ours.set(error, value);
  return error;
}

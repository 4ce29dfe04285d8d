import { type ComponentType, useEffect, useReducer, useState } from "react";
import { useMessages } from "./use-messages";

/** A part of the pane whose script is fetched when it is wanted. */
export class Part<Props> {
  readonly #imported: () => Promise<ComponentType<Props>>;
  fetched: ComponentType<Props> | undefined;

  constructor(imported: () => Promise<ComponentType<Props>>) {
    this.#imported = imported;
  }

  async fetch(): Promise<void> {
    this.fetched ??= await this.#imported();
  }
}

interface LaterProps<Props> {
  readonly part: Part<Props>;
  readonly given: Props;
}

/** The part with what it is given; words until it is fetched, and where it cannot be. */
export function Later<Props extends object>({ part, given }: LaterProps<Props>) {
  const { shell } = useMessages();
  const [, drawAnew] = useReducer((times: number) => times + 1, 0);
  const [isLost, setLost] = useState(false);
  const { fetched: Fetched } = part;
  useEffect(() => {
    if (Fetched !== undefined) return;
    let isWanted = true;
    part.fetch().then(
      () => isWanted && drawAnew(),
      () => isWanted && setLost(true),
    );
    return () => {
      isWanted = false;
    };
  }, [part, Fetched]);
  if (Fetched !== undefined) return <Fetched {...given} />;
  if (!isLost) return <p role="status">{shell.wait}</p>;
  // To try again would be in vain: a browser remembers of a page's script that it could not be fetched.
  return (
    <p className="problem" role="alert">
      {shell.notFetched}
    </p>
  );
}

import { cautions } from "../core/cautions";
import { useMessages } from "./use-messages";

/** Every caution of the catalogue, in the order of the working day. */
export function CautionsPage() {
  const messages = useMessages();
  return (
    <>
      <h1>{messages.tabs.cautions}</h1>
      <p>{messages.deferral}</p>
      {cautions.map(({ id }) => (
        <section key={id}>
          <h2>{messages.cautions[id]?.title}</h2>
          <p>{messages.cautions[id]?.text}</p>
        </section>
      ))}
    </>
  );
}

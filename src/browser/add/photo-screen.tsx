/** A photograph before firing: taken here, made anew, shown. */
import type { VNode } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { photoHelp } from "../../../templates/words/add/form.ts";
import { draw, PictureRefused, retake } from "./photograph.ts";
import type { FormStore } from "./store.ts";

export function PhotoScreen({ form }: { readonly form: FormStore }): VNode {
  const { photo } = form.state;
  const [told, tell] = useState("");
  const take = async (file: File | undefined) => {
    if (!file) return;
    tell("One moment: the picture is made ready.");
    try {
      form.takePhotograph((await retake(file)).jpeg);
      tell("");
    } catch (error) {
      if (!(error instanceof PictureRefused)) throw error;
      tell(error.message);
    }
  };
  return (
    <>
      <p class="quiet">{photoHelp}</p>
      {photo && <Shown photo={photo} />}
      <p class="form-take">
        <Take label={photo ? "Take another" : "Take a photograph"} capture take={take} />
        <Take label="Choose one" capture={false} take={take} />
        {photo && (
          <button type="button" onClick={() => form.takePhotograph(null)}>
            Without it
          </button>
        )}
      </p>
      <p role="status" class="form-fault">
        {told}
      </p>
    </>
  );
}

function Take(props: {
  readonly label: string;
  readonly capture: boolean;
  readonly take: (file: File | undefined) => Promise<void>;
}): VNode {
  const { label, capture, take } = props;
  return (
    <label class="form-file">
      <span>{label}</span>
      <input
        type="file"
        accept="image/*"
        {...(capture && { capture: "environment" as const })}
        onChange={(event) => {
          const input = event.currentTarget;
          // The same file may be chosen again, and that counts as well.
          void take(input.files?.[0]).finally(() => {
            input.value = "";
          });
        }}
      />
    </label>
  );
}

/** So wide, in pixels, as a phone shows it sharply. */
const shownWide = 720;

/** Drawn, since the page allows no picture of an address that it does not know. */
export function Shown({ photo }: { readonly photo: Blob }): VNode {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const show = async () => {
      const bitmap = await createImageBitmap(photo);
      const into = canvas.current;
      if (into) {
        into.width = Math.min(shownWide, bitmap.width);
        into.height = Math.round((bitmap.height * into.width) / bitmap.width);
        draw(into, bitmap);
      }
      bitmap.close();
    };
    void show();
  }, [photo]);
  return <canvas ref={canvas} class="form-shown" role="img" aria-label="The photograph" />;
}

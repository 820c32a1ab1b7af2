/** What runs inside the page while it is measured. Each function is sent as its own text, so it stands alone. */

export interface PageWatch {
  /** From each input event to the first paint of the charts that followed it. */
  readonly redraws_ms: number[];
  /** Sum of layout shifts that no hand brought about. */
  shift: number;
}

/**
 * The charts draw their traces anew, on a canvas that is not on the page, for a new run only; a stroke there tells that
 * one is being shown. It has been painted when the frame after it has come to its end.
 */
export function watchRedraws(): void {
  const watch: PageWatch = { redraws_ms: [], shift: 0 };
  Object.assign(globalThis, { pageWatch: watch });

  let waiting_ms: number | null = null;
  let isNoticed = false;
  addEventListener('input', (event) => (waiting_ms = event.timeStamp), { capture: true });

  const noticed = () => {
    if (waiting_ms === null || isNoticed) return;
    const since_ms = waiting_ms;
    isNoticed = true;
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        watch.redraws_ms.push(performance.now() - since_ms);
        if (waiting_ms === since_ms) waiting_ms = null;
        isNoticed = false;
      };
      port2.postMessage(null);
    });
  };
  const { stroke } = CanvasRenderingContext2D.prototype;
  CanvasRenderingContext2D.prototype.stroke = function (this: CanvasRenderingContext2D, ...given: [Path2D?]) {
    if (!this.canvas.isConnected) noticed();
    return Reflect.apply(stroke, this, given) as undefined;
  };

  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & { value: number; hadRecentInput: boolean })[]) {
      if (!entry.hadRecentInput) watch.shift += entry.value;
    }
  }).observe({ type: 'layout-shift', buffered: true });
}

/** Times between frames for so long. */
export function watchFrames(during_ms: number): Promise<number[]> {
  return new Promise((resolve) => {
    const frames_ms: number[] = [];
    let start_ms: number | null = null;
    let last_ms = 0;
    const next = (now_ms: number) => {
      if (start_ms === null) start_ms = now_ms;
      else frames_ms.push(now_ms - last_ms);
      last_ms = now_ms;
      if (now_ms - start_ms < during_ms) requestAnimationFrame(next);
      else resolve(frames_ms);
    };
    requestAnimationFrame(next);
  });
}

/** Keeps the app itself on this computer, so that it opens without a network. */
export class Offline {
  /** A newer version is at hand and waits until this page lets it in. */
  newer = $state(false);
  #waiting: ServiceWorker | null = null;

  /** Starts it; a browser that cannot simply needs the network for the next visit. */
  async start(): Promise<void> {
    if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
    try {
      const registration = await navigator.serviceWorker.register('./sw.js');
      this.#watch(registration);
    } catch {
      // The page works all the same while the network is there.
    }
  }

  /** Lets the newer version in and loads it. */
  update(): void {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload());
    this.#waiting?.postMessage({ type: 'SKIP_WAITING' });
  }

  #watch(registration: ServiceWorkerRegistration): void {
    const offer = (worker: ServiceWorker | null) => {
      if (!worker || !navigator.serviceWorker.controller) return;
      this.#waiting = worker;
      this.newer = true;
    };
    offer(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const worker = registration.installing;
      worker?.addEventListener('statechange', () => {
        if (worker.state === 'installed' && registration.waiting) offer(worker);
      });
    });
  }
}

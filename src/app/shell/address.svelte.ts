/** The part of the page that the address names after `#`. */
export class Address {
  #id = $state(read());

  get id(): string {
    return this.#id;
  }

  go(id: string): void {
    location.hash = id;
    this.#id = id;
  }

  /** Follows the back and forward buttons. @returns what stops it */
  listen(): () => void {
    const follow = () => (this.#id = read());
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }
}

function read(): string {
  return decodeURIComponent(location.hash.slice(1));
}

// Camps kept on the computer that serves the app: asked for by the cook, never sent by itself.

export interface KeptCamp {
  readonly id: string;
  readonly version: number;
  readonly title: string;
  readonly date: string;
  readonly keptAt: string;
}

export interface ServerStatus {
  readonly version: string;
  readonly store: 'sqlite' | 'none';
  readonly crewSync: 'off';
  readonly why: string;
}

/** What the server can do; undefined where there is none to be reached. */
export async function serverStatus(): Promise<ServerStatus | undefined> {
  try {
    const answer = await fetch('/api/status');
    return answer.ok ? ((await answer.json()) as ServerStatus) : undefined;
  } catch {
    return undefined;
  }
}

export async function keptCamps(): Promise<readonly KeptCamp[]> {
  const answer = await fetch('/api/camps');
  return answer.ok ? ((await answer.json()) as { camps: readonly KeptCamp[] }).camps : [];
}

export async function keptFile(id: string): Promise<string | undefined> {
  const answer = await fetch(`/api/camps/${encodeURIComponent(id)}`);
  return answer.ok ? answer.text() : undefined;
}

/** Sends one camp; says in a sentence how it went. */
export async function keepCamp(id: string, file: string): Promise<string> {
  try {
    const answer = await fetch(`/api/camps/${encodeURIComponent(id)}`, {
      method: 'PUT',
      headers: { 'Content-Type': 'application/json' },
      body: file,
    });
    const said = (await answer.json()) as Partial<KeptCamp & { found: string; next: string }>;
    if (answer.ok) return `Kept on this computer, version ${said.version}.`;
    return `Not kept: ${said.found}. ${said.next}`;
  } catch {
    return 'Not kept: the server can’t be reached. The camp is still in this browser.';
  }
}

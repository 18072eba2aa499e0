/** Requests to the server. Each returns {value}, or {problem} as RFC 9457 has it. */

const LONGEST_WAIT = 10; // seconds

/** Asks once more where the server is busy and says for how long. */
async function ask(path, request) {
  const response = await fetch(path, request);
  const wait = Number(response.headers.get('Retry-After') ?? NaN);
  if (response.status !== 503 || !(wait <= LONGEST_WAIT)) {
    return response;
  }
  await new Promise(done => { setTimeout(done, 1000 * wait); });
  return fetch(path, request);
}

async function send(path, plan) {
  try {
    const response = await ask(path, {
      method: 'POST',
      headers: {'Content-Type': 'application/json', Accept: 'application/json, application/problem+json'},
      body: typeof plan === 'string' ? plan : JSON.stringify(plan),
    });
    const value = await response.json();
    return response.ok ? {value} : {problem: value};
  } catch (error) {
    return {problem: {title: 'The server does not answer', detail: String(error.message)}};
  }
}

export const solve = plan => send('solve', plan);

/** Result and picture of one arrangement. */
export const view = (plan, wishes) => send(`view?${new URLSearchParams(wishes)}`, plan);

export const load = async path => (await fetch(path)).json();

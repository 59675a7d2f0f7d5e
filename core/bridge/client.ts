import { type Channel } from './channels';
import { type RawBridge, type Request, type Response, contract } from './contract';

export interface BridgeClient {
  call<C extends Channel>(channel: C, request: Request<C>): Promise<Response<C>>;
}

/** The window's end of the bridge: typed, and parsed in both directions. Rejects when host and window disagree. */
export const bridgeClient = (raw: RawBridge): BridgeClient => ({
  async call<C extends Channel>(channel: C, request: Request<C>): Promise<Response<C>> {
    const { request: question, response: answer } = contract[channel];
    return answer.parse(await raw.invoke(channel, question.parse(request))) as Response<C>;
  },
});

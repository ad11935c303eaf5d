/** The gateway of the loopback: hello, identify or resume, heartbeats, and events that a lost connection is sent again. */

import type { Server } from 'node:http';
import { GatewayOpcodes } from 'discord.js';
import { type WebSocket, WebSocketServer } from 'ws';
import { field } from './json-field.ts';

export interface FakeGateway {
  dispatch(data: unknown, event?: string): void;
  drop(code: number): void;
  readonly connections: readonly string[];
  connected(count: number): Promise<void>;
  close(): void;
}

export function fakeGateway(server: Server, address: () => string): FakeGateway {
  const sockets = new Set<WebSocket>();
  const events: { t: string; s: number; d: unknown }[] = [];
  const connections: string[] = [];
  const waiting: (() => void)[] = [];
  const sockServer = new WebSocketServer({ server });
  let sequence = 0;
  sockServer.on('connection', (socket) => {
    const send = (payload: unknown): void => socket.send(JSON.stringify(payload));
    const began = (how: string): void => {
      sockets.add(socket);
      connections.push(how);
      for (const wake of waiting.splice(0)) wake();
    };
    socket.on('close', () => sockets.delete(socket));
    socket.on('message', (data) => {
      const payload: unknown = JSON.parse(String(data));
      const op = field(payload, 'op');
      if (op === GatewayOpcodes.Heartbeat) send({ op: GatewayOpcodes.HeartbeatAck, d: null, s: null, t: null });
      if (op === GatewayOpcodes.Identify) {
        sequence += 1;
        send({ op: GatewayOpcodes.Dispatch, t: 'READY', s: sequence, d: ready(field(payload, 'd'), address()) });
        began('identify');
      }
      if (op === GatewayOpcodes.Resume) {
        const seen = Number(field(field(payload, 'd'), 'seq'));
        for (const event of events) if (event.s > seen) send({ op: GatewayOpcodes.Dispatch, ...event });
        send({ op: GatewayOpcodes.Dispatch, t: 'RESUMED', s: sequence, d: {} });
        began('resume');
      }
    });
    send({ op: GatewayOpcodes.Hello, d: { heartbeat_interval: 40_000 }, s: null, t: null });
  });
  return {
    connections,
    dispatch(data, name = 'INTERACTION_CREATE') {
      sequence += 1;
      const event = { t: name, s: sequence, d: data };
      events.push(event);
      // Only as many as a lost connection could miss.
      if (events.length > 100) events.shift();
      const text = JSON.stringify({ op: GatewayOpcodes.Dispatch, ...event });
      for (const socket of sockets) socket.send(text);
    },
    drop(code) {
      for (const socket of sockets) socket.close(code);
      sockets.clear();
    },
    async connected(count) {
      while (connections.length < count) await new Promise<void>((resolve) => waiting.push(resolve));
    },
    close() {
      for (const socket of sockServer.clients) socket.terminate();
      sockServer.close();
    },
  };
}

function ready(identify: unknown, address: string) {
  return {
    v: 10,
    user: { id: '900000000000000001', username: 'floorhand', discriminator: '0', avatar: null, bot: true },
    guilds: [],
    session_id: 'session',
    resume_gateway_url: address,
    application: { id: '900000000000000001', flags: 0 },
    shard: field(identify, 'shard') ?? [0, 1],
  };
}

import * as z from 'zod';
import { Text } from '../nodes.ts';
import { refuse } from './issue.ts';

const SIZE = /^(\d{1,6}(?:\.\d{1,15})?)\s*[x×]\s*(\d{1,6}(?:\.\d{1,15})?)$/;

/** An egg's length and breadth in millimetres: `14.2 x 10.8`. */
export const eggSize = z
  .instanceof(Text)
  .transform((node, context): { length: number; breadth: number } => {
    const match = SIZE.exec(node.text.trim());
    if (match === null) return refuse(context, node.at, 'not-a-size', { text: node.text });
    const sides = [Number(match[1]), Number(match[2])];
    if (Math.min(...sides) === 0) return refuse(context, node.at, 'not-a-size', { text: node.text });
    return { length: Math.max(...sides), breadth: Math.min(...sides) };
  })
  .meta({ shape: 'size', description: 'length x breadth in mm' });

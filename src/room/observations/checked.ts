import { takeLook } from '../look.ts';
import type { Apply } from './apply.ts';

export const checked: Apply<'checked'> = takeLook;

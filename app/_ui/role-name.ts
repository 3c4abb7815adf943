import type { Role } from '@/lib/domain/policy/standing';

const names: Record<Role, string> = {
  secretary: 'secretary',
  treasurer: 'treasurer',
  chair: 'chair',
  gate_helper: 'gate helper',
};

/** An office's word on the screen. */
export function roleName(role: Role): string {
  return names[role];
}

const TIME = /^(\d{1,2}):(\d{2})$/;
const OTHER_TIME = /^(\d{1,2})(?:[.:h ]?(\d{2})?)?\s*(am|pm|h)?$/i;

/** Minutes since midnight of `07:30`, or null when the text is no time of a day. */
export function parseTime(text: string): number | null {
  const match = TIME.exec(text);
  return match === null ? null : minutesOf(Number(match[1]), Number(match[2]));
}

/** `07:30` of minutes since midnight. */
export function formatTime(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

/** The right form of `7.30`, `7h30`, `0730`, `7 pm`; empty where nothing is near. */
export function suggestTime(text: string): string {
  const match = OTHER_TIME.exec(text);
  if (match === null) return '';
  const half = match[3]?.toLowerCase();
  const hour = Number(match[1]);
  const minutes = minutesOf(
    half === 'pm' && hour < 12 ? hour + 12 : half === 'am' && hour === 12 ? 0 : hour,
    Number(match[2] ?? 0),
  );
  return minutes === null ? '' : formatTime(minutes);
}

function minutesOf(hour: number, minute: number): number | null {
  return hour < 24 && minute < 60 ? hour * 60 + minute : null;
}

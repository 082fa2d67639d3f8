// Package readability measures how hard a text is to read, in English and in
// Spanish, by published formulas. Limits are our own choice: family texts a
// parent can read when tired, stories a child can read who has just learned to.
//
// How things are counted:
//
//   - A word is a run of letters, with apostrophes or hyphens inside, or a run of
//     digits.
//   - A sentence ends at . ? ! … or another script's own mark. A "?" in an
//     equation ends nothing.
//   - A number in digits is one word of one syllable, and an easy one. Names of
//     people are easy words. So is a listed word with a regular ending: -s, -es,
//     -ed, -ing, -er, -est, -'s.
//   - The formulas ask for samples of a hundred words. On less they are reported
//     and hold nobody up.
package readability

/**
 * What the rules say to people of their own accord: in English, and by a code for those who keep it in other languages. Start reading at
 * {@link yardlight.escalation.sentence.Sentence}. Knows no other language, and nothing of where it is shown.
 */
package yardlight.escalation.sentence;

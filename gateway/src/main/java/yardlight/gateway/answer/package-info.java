/**
 * How a person answers a text: by the link in it or by sending a word back. Start reading at {@code AnswerPage} and
 * {@code RepliesController}. Both know the person by what they hold, not by a login, and both leave it to the lane what an
 * answer does.
 */
package yardlight.gateway.answer;

/**
 * One message to one person, and where it stands.
 *
 * <p>Start with {@link yardlight.escalation.notice.NoticeState}. Nothing here knows how a message is carried or what it
 * says; both are decided elsewhere.
 */
package yardlight.escalation.notice;

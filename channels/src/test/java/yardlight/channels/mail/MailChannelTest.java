package yardlight.channels.mail;

import java.util.Optional;

class MailChannelTest extends SmtpContract {

    @Override
    SmtpChannel channel(Optional<MailSettings> settings) {
        return SmtpChannel.mail(settings);
    }
}

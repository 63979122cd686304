package yardlight.channels.mail;

import java.util.Optional;

class SmsMailChannelTest extends SmtpContract {

    @Override
    SmtpChannel channel(Optional<MailSettings> settings) {
        return SmtpChannel.smsMail(settings);
    }
}

package yardclock.app.access;

import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Role;

import java.util.Optional;
import java.util.concurrent.CompletionStage;

/** What the state knows of codes and tokens, by their hashes. Any thread may ask. */
public interface Rolls {
    CompletionStage<Optional<Holder>> holder(String tokenSha256);

    CompletionStage<Optional<Role>> codeRole(String codeSha256);
}

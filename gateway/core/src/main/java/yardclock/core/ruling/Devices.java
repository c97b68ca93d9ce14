package yardclock.core.ruling;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Codes that were made and devices that used one. Knows hashes only, never a code or a token. */
public final class Devices {
    private final Map<String, Code> codes = new LinkedHashMap<>();
    private final Map<String, Holder> byToken = new LinkedHashMap<>();
    private final Map<String, Holder> byDevice = new LinkedHashMap<>();

    private record Code(Role role, boolean used) {}

    /** An enrolled device. */
    public record Holder(String device, String person, Role role) {}

    public void issue(String codeSha256, Role role) {
        codes.putIfAbsent(codeSha256, new Code(role, false));
    }

    /** Null when the device is enrolled now; a code works once, and only for its role. */
    public Refusal enrol(Holder holder, String codeSha256, String tokenSha256) {
        Code code = codes.get(codeSha256);
        if (code != null && code.used()) {
            return Refusal.ALREADY_ENROLLED;
        }
        if (code == null || code.role() != holder.role()) {
            return Refusal.UNKNOWN_CODE;
        }
        codes.put(codeSha256, new Code(code.role(), true));
        byToken.put(tokenSha256, holder);
        byDevice.put(holder.device(), holder);
        return null;
    }

    public Optional<Holder> holder(String tokenSha256) {
        return Optional.ofNullable(byToken.get(tokenSha256));
    }

    public Optional<Holder> device(String device) {
        return Optional.ofNullable(byDevice.get(device));
    }

    /** The role a code that was not used yet is for. */
    public Optional<Role> roleOfCode(String codeSha256) {
        return Optional.ofNullable(codes.get(codeSha256)).map(Code::role);
    }

    public Collection<Holder> all() {
        return Collections.unmodifiableCollection(byDevice.values());
    }

    /** Why an act is refused while no plan is there, which leaves nothing to rule on. */
    public Refusal withoutPlan(String device, ActKind kind) {
        return device(device)
                .map(who -> kind.allows(who.role()) ? Refusal.NO_PLAN : Refusal.NOT_YOUR_ROLE)
                .orElse(Refusal.UNKNOWN_DEVICE);
    }

    @Override
    public String toString() {
        return codes + " " + byToken;
    }
}

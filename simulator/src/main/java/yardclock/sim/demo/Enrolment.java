package yardclock.sim.demo;

import com.fasterxml.jackson.databind.JsonNode;

import yardclock.sim.tablets.Gateway;
import yardclock.sim.tablets.Tablet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Hands out the first codes: some to the simulated people, who use them at once, the rest to
 * whoever watches. Used from one thread, before the day begins.
 */
final class Enrolment {
    /** Invented, as everything of the demo day; proctors are named by trees. */
    private static final List<String> PROCTORS =
            List.of("Alder", "Birch", "Cedar", "Juniper", "Maple");

    private static final int SECONDS = 10;

    private final Gateway gateway;
    private final Map<String, ArrayDeque<String>> codes = new LinkedHashMap<>();

    Enrolment(Gateway gateway, Map<String, List<String>> firstCodes) {
        this.gateway = gateway;
        firstCodes.forEach((role, all) -> codes.put(role, new ArrayDeque<>(all)));
    }

    Tablet.Access coordinator() throws DemoFailedException {
        return enrol("coordinator", "Coordinator");
    }

    Tablet.Access crew() throws DemoFailedException {
        return enrol("crew", "Crew");
    }

    Tablet.Access safety() throws DemoFailedException {
        return enrol("safety", "Spruce");
    }

    List<Tablet.Access> proctors() throws DemoFailedException {
        List<Tablet.Access> proctors = new ArrayList<>();
        for (String name : PROCTORS) {
            proctors.add(enrol("proctor", name));
        }
        return proctors;
    }

    private Tablet.Access enrol(String role, String person) throws DemoFailedException {
        ArrayDeque<String> left = codes.getOrDefault(role, new ArrayDeque<>());
        if (left.isEmpty()) {
            throw new DemoFailedException("The gateway made no code for a " + role + ".");
        }
        Gateway.Answer answer = await(gateway.enrol(left.removeFirst(), person));
        JsonNode body = answer.body();
        if (!answer.isOk()) {
            throw new DemoFailedException("A " + role + " was not enrolled: " + body);
        }
        return new Tablet.Access(body.path("token").asText(), body.path("device").asText(), role);
    }

    /** One unused code a role for a person; the coordinator makes one where none is left. */
    Map<String, String> forPeople(Tablet.Access coordinator) throws DemoFailedException {
        Map<String, String> links = new LinkedHashMap<>();
        for (Map.Entry<String, ArrayDeque<String>> role : codes.entrySet()) {
            String code = role.getValue().peekFirst();
            links.put(role.getKey(), code == null ? made(coordinator, role.getKey()) : code);
        }
        return links;
    }

    private String made(Tablet.Access coordinator, String role) throws DemoFailedException {
        Gateway.Answer answer = await(gateway.newCode(coordinator.token(), role));
        if (!answer.isOk()) {
            throw new DemoFailedException("No code was made for a " + role + ": " + answer.body());
        }
        return answer.body().path("code").asText();
    }

    static <T> T await(Future<T> answer) throws DemoFailedException {
        try {
            return answer.get(SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException e) {
            throw new DemoFailedException("The gateway does not answer.", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new DemoFailedException("Interrupted.", e);
        }
    }
}

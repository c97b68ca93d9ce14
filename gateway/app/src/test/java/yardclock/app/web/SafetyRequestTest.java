package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;

import yardclock.app.json.Json;
import yardclock.core.course.Text;
import yardclock.core.engine.Input;
import yardclock.core.readiness.Team;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Role;
import yardclock.core.ruling.Verdict;

import java.net.http.HttpResponse;
import java.util.List;

/** What the safety officer's page sends, and what a release is told of the checklist. */
class SafetyRequestTest extends WithRefusals {
    @Test
    void aReadingByHandMayBeBelowZeroAndWithoutAGlobe() throws Exception {
        String reading =
                "{\"act\":\"hand-reading\",\"centiCelsius\":-350,\"centiPercent\":8000,"
                        + "\"globeCentiCelsius\":null,\"instrument\":\"a sling psychrometer\"}";
        HttpResponse<String> answer = bench.post("/api/rulings", Role.SAFETY, ruling(reading));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        Input.Ruling taken = (Input.Ruling) bench.lane.taken().get(0);
        assertThat(taken.act())
                .isEqualTo(new Act.HandReading(-350, 8_000, null, "a sling psychrometer"));
        for (String wrong :
                List.of(
                        reading.replace("null", "\"warm\""),
                        reading.replace("\"globeCentiCelsius\":null,", ""),
                        reading.replace("-350", "-20001"),
                        reading.replace("-350", "null"),
                        reading.replace("a sling psychrometer", ""))) {
            refused(bench.post("/api/rulings", Role.SAFETY, ruling(wrong)), 400, "malformed");
        }
    }

    @Test
    void onlyATeamThatStandsByIsCalledAway() throws Exception {
        String away = "{\"act\":\"team-away\",\"team\":\"medical\"}";
        assertThat(bench.post("/api/rulings", Role.SAFETY, ruling(away)).statusCode())
                .isEqualTo(200);
        Input.Ruling taken = (Input.Ruling) bench.lane.taken().get(0);
        assertThat(taken.act()).isEqualTo(new Act.TeamAway(Team.MEDICAL, ""));
        for (String wrong : List.of("\"band\"", "null", "0", "\"MEDICAL\"")) {
            String other = ruling(away.replace("\"medical\"", wrong));
            refused(bench.post("/api/rulings", Role.SAFETY, other), 400, "malformed");
        }
    }

    @Test
    void aReleaseRefusedForTheChecklistNamesWhatIsOpenInBothLanguages() throws Exception {
        List<Text> open =
                List.of(new Text("A tub of ice", "Una tina"), new Text("Shade", "Sombra"));
        bench.lane.rules = input -> new Verdict(Refusal.CHECKLIST_OPEN, 9, null, open);
        String release = "{\"act\":\"release\",\"number\":12,\"proctorDevice\":\"t-proctor\"}";
        HttpResponse<String> answer = bench.post("/api/rulings", Role.COORDINATOR, ruling(release));
        assertThat(answer.statusCode()).isEqualTo(409);
        JsonNode body = Json.mapper().readTree(answer.body());
        assertThat(body.path("refused").asText()).isEqualTo("checklist-open");
        assertThat(body.path("words").asText()).endsWith("Open: A tub of ice; Shade.");
        assertThat(body.path("named").path(1).path("es").asText()).isEqualTo("Sombra");
    }

    @Test
    void aSignatureNamesItsItem() throws Exception {
        String done = "{\"act\":\"checklist-done\",\"item\":\"cooling\"}";
        assertThat(bench.post("/api/rulings", Role.SAFETY, ruling(done)).statusCode())
                .isEqualTo(200);
        Input.Ruling taken = (Input.Ruling) bench.lane.taken().get(0);
        assertThat(taken.act()).isEqualTo(new Act.ChecklistDone("cooling", ""));
        for (String wrong : List.of("\"\"", "null", "7")) {
            String other = ruling(done.replace("\"cooling\"", wrong));
            refused(bench.post("/api/rulings", Role.SAFETY, other), 400, "malformed");
        }
    }
}

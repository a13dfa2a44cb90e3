namespace LiveHeat.Server.Access;

public sealed class BadRequestsTests
{
    [Theory]
    [InlineData("", "line 1, character 1")]
    [InlineData("null", "Something must stand here")]
    [InlineData("{", "line 1")]
    [InlineData("{\n\"role\":\"judge\",\n\"lane\" 2}", "line 3")]
    [InlineData("""{"role":"judge","lane":100}""", "the field lane")]
    [InlineData("""{"role":"judge","lane":100}""", "A lane is a number from 1 to 99")]
    [InlineData("""{"role":"judge","lane":"2"}""", "the field lane")]
    [InlineData("""{"role":"emperor"}""", "the field role")]
    [InlineData("""{"role":2}""", "the field role")]
    [InlineData("""{"role":null}""", "the field role")]
    [InlineData("""{"role":"judge","lane":2,"minutes":1.5}""", "the field minutes")]
    [InlineData("""[1]""", "line 1")]
    [InlineData("\"\\ud800\"", "line 1")]
    public async Task What_cannot_be_read_is_answered_with_its_place(string body, string place)
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();

        var answer = await organiser.PostText("/api/codes", body);

        Assert.Equal(400, answer.Status);
        Assert.Equal("unreadable", answer.Code);
        Assert.Contains(place, answer.Detail, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", answer.Detail, StringComparison.Ordinal);
        Assert.Equal("application/problem+json", answer.Response.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task A_case_that_is_not_named_cannot_be_read()
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();

        var answer = await organiser.PutText("/api/setup/workouts/w1", """{"id":"w1","name":"Low Tide","order":{"size":2}}""");

        Assert.Equal(400, answer.Status);
        Assert.Equal("unreadable", answer.Code);
    }

    [Fact]
    public async Task A_list_in_a_list_is_named_by_both_places()
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();

        var answer = await organiser.PutText(
            "/api/setup/workouts/w1", """{"id":"w1","prescriptions":[{"division":"open"},{"division":"rx","round":[{"movement":"row","quantity":"many"}]}]}""");

        Assert.Contains("the field prescriptions[1].round[0].quantity (", answer.Detail, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", answer.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_place_in_a_list_is_named()
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();

        var answer = await organiser.PutText("/api/setup/heats/h1", """{"id":"h1","number":1,"title":"Heat 1","workout":"w","lanes":[{"lane":1,"team":"a"},{"lane":0,"team":"b"}]}""");

        Assert.Contains("the field lanes[1].lane (", answer.Detail, StringComparison.Ordinal);
        Assert.EndsWith(": A lane is a number from 1 to 99. Nothing was done.", answer.Detail, StringComparison.Ordinal);
    }
}

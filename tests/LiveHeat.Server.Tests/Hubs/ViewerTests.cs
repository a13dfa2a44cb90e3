using System.Runtime.CompilerServices;
using System.Text;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Hubs;

public sealed class ViewerTests
{
    private readonly Heard<string> sent = new();
    private TaskCompletionSource link = new();

    public ViewerTests() => link.SetResult();

    [Fact]
    public async Task What_is_offered_is_sent_and_what_everybody_needs_first_comes_first()
    {
        link = new TaskCompletionSource();
        var viewer = new Viewer("c1", Send);
        viewer.OfferPhones(Raw("[]"));
        viewer.OfferFrame(Raw("{}"));
        viewer.OfferProgram();
        link.SetResult();
        var pump = viewer.Pump();

        await sent.First(_ => true, from: 2);
        viewer.Leave();
        await pump;

        Assert.Equal(["c1 ProgramChanged ", "c1 FrameReady {}", "c1 PhonesReady []"], sent.All);
    }

    [Fact]
    public async Task While_a_send_hangs_a_newer_frame_takes_the_place_of_the_one_that_waits()
    {
        link = new TaskCompletionSource();
        var viewer = new Viewer("c1", Send);
        var pump = viewer.Pump();
        viewer.OfferFrame(Raw("1"));
        await sent.First(_ => true);

        for (var frame = 2; frame <= 1000; frame++)
        {
            viewer.OfferFrame(Raw($"{frame}"));
        }

        Assert.Single(sent.All);
        link.SetResult();
        await sent.First(_ => true, from: 1);
        viewer.Leave();
        await pump;
        Assert.Equal(["c1 FrameReady 1", "c1 FrameReady 1000"], sent.All);
    }

    [Fact]
    public void A_link_that_never_takes_anything_costs_two_frames_of_memory()
    {
        link = new TaskCompletionSource();
        var viewer = new Viewer("c1", Send);
        _ = viewer.Pump();

        var frames = Offer(viewer, 500);

        GC.Collect();
        Assert.InRange(frames.Count(frame => frame.IsAlive), 1, 2);
        GC.KeepAlive(viewer);
    }

    [Fact]
    public async Task Offering_never_waits_for_a_link_that_hangs()
    {
        var stuck = new Viewer("stuck", (_, _, _) => new TaskCompletionSource().Task);
        var viewer = new Viewer("c1", Send);
        _ = stuck.Pump();
        var pump = viewer.Pump();

        for (var frame = 1; frame <= 10; frame++)
        {
            stuck.OfferFrame(Raw($"{frame}"));
            viewer.OfferFrame(Raw($"{frame}"));
            await sent.First(line => line == $"c1 FrameReady {frame}");
        }

        viewer.Leave();
        await pump;
        Assert.Equal(10, sent.All.Count);
    }

    [Fact]
    public async Task Leaving_ends_the_pump_and_nothing_more_is_sent()
    {
        var viewer = new Viewer("c1", Send);
        viewer.Leave();
        viewer.OfferFrame(Raw("1"));

        await viewer.Pump().WaitAsync(Heard<string>.Patience);

        Assert.Empty(sent.All);
    }

    private async Task Send(string connection, string method, object?[] arguments)
    {
        sent.Add($"{connection} {method} {string.Join(",", arguments.Select(argument => Encoding.UTF8.GetString(((RawJson)argument!).Utf8.Span)))}");
        await link.Task;
    }

    private static RawJson Raw(string json) => new(Encoding.UTF8.GetBytes(json));

    /// <summary>In a method of its own, so that nothing on this stack holds the frames.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static List<WeakReference> Offer(Viewer viewer, int count)
    {
        var frames = new List<WeakReference>();
        for (var frame = 0; frame < count; frame++)
        {
            var raw = Raw($"{frame}");
            frames.Add(new WeakReference(raw));
            viewer.OfferFrame(raw);
        }

        return frames;
    }
}

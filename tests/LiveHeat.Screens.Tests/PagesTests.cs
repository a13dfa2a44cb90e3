using System.Net;
using System.Reflection;
using Bunit;
using LiveHeat.Contracts.Access;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using MudBlazor.Services;

namespace LiveHeat.Screens;

/// <summary>A page that is left holds on to nothing: no event of a store, no timer. Found by reflection, so that a new page is tested too.</summary>
public sealed class PagesTests : BunitContext, IAsyncLifetime
{
    private readonly CountingTime time = new();
    private readonly List<Type> stores;

    public PagesTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        JSInterop.SetupModule("./page.js").Mode = JSRuntimeMode.Loose;
        JSInterop.SetupModule("./strips.js").Mode = JSRuntimeMode.Loose;
        Services.AddMudServices();
        Services.AddLogging();
        Services.AddSingleton<TimeProvider>(time);
        Services.AddSingleton(new HttpClient(new NobodyAnswers()) { BaseAddress = new Uri("http://127.0.0.1/") });
        var before = Services.Count;
        Services.AddScreens(new Uri("http://127.0.0.1/"));
        stores = [.. Services.Skip(before).Where(service => service.Lifetime == ServiceLifetime.Singleton).Select(service => service.ServiceType)];
    }

    /// <summary>All that comes and goes: every page, and the layouts but the outermost, which stays as long as the screen is open.</summary>
    public static TheoryData<Type> Pages => [.. typeof(App).Assembly.GetTypes()
        .Where(type => type.GetCustomAttributes<RouteAttribute>().Any() || (type.IsAssignableTo(typeof(LayoutComponentBase)) && type != typeof(ScreenLayout)))];

    public Task InitializeAsync() => Task.CompletedTask;

    /// <summary>Some services can only be let go of this way.</summary>
    async Task IAsyncLifetime.DisposeAsync() => await DisposeAsync();

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_page_that_is_left_lets_go_of_all_it_took(Type page)
    {
        SignedIn();
        var (taken, timers) = (Taken(), time.Running);

        var shown = Render(builder =>
        {
            builder.OpenComponent<CascadingValue<ScreenLayout>>(0);
            builder.AddComponentParameter(1, "Value", ActivatorUtilities.CreateInstance<ScreenLayout>(Services));
            builder.AddComponentParameter(2, "ChildContent", (RenderFragment)(inside =>
            {
                inside.OpenComponent(0, page);
                inside.CloseComponent();
            }));
            builder.CloseComponent();
        });
        Assert.Equal(TakesNothing.Contains(page.Name), taken.SequenceEqual(Taken()));
        shown.Dispose();
        await DisposeComponentsAsync();
        time.Advance(TimeSpan.FromMinutes(2));      // what is being asked for comes to its end

        Assert.Equal(taken, Taken());
        Assert.Equal(timers, time.Running);
    }

    /// <summary>Pages that show the same whatever happens.</summary>
    private static readonly string[] TakesNothing = ["NoSuchPage", "CodesPage"];

    private void SignedIn()
    {
        Services.GetRequiredService<SignInStore>().Take(new Reply<Me>(new Me(Role.Organiser, "Ona", null, "in-desk"), null));
        var (frame, sheet) = SomeHeat.Told("start\nlane 1 step 1 done at 0:30");
        var heat = Services.GetRequiredService<HeatStore>();
        heat.Follow(HeatConnection.Current);
        heat.Take(frame);
        heat.Take(sheet);
    }

    /// <summary>How many listen to each event of each store.</summary>
    private List<string> Taken() =>
    [
        .. from store in stores
            from field in store.GetFields(BindingFlags.Instance | BindingFlags.NonPublic)
            where field.FieldType.IsAssignableTo(typeof(Delegate)) && store.GetEvent(field.Name) is not null
            let listeners = ((Delegate?)field.GetValue(Services.GetRequiredService(store)))?.GetInvocationList().Length ?? 0
            select $"{store.Name}.{field.Name}: {listeners}",
    ];

    /// <summary>A clock that stands until it is moved, and knows how many timers run by it.</summary>
    private sealed class CountingTime : FakeTimeProvider
    {
        public int Running { get; private set; }

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            Running++;
            return new Counted(base.CreateTimer(callback, state, dueTime, period), () => Running--);
        }

        private sealed class Counted(ITimer timer, Action ended) : ITimer
        {
            private bool over;

            public bool Change(TimeSpan dueTime, TimeSpan period) => timer.Change(dueTime, period);

            public void Dispose()
            {
                if (!over)
                {
                    over = true;
                    ended();
                }

                timer.Dispose();
            }

            public ValueTask DisposeAsync()
            {
                Dispose();
                return ValueTask.CompletedTask;
            }
        }
    }

    private sealed class NobodyAnswers : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(new HttpResponseMessage(HttpStatusCode.ServiceUnavailable));
    }
}

using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace LiveHeat.Ledger.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class FirstLedger : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "epochs",
                columns: table => new
                {
                    number = table.Column<long>(type: "INTEGER", nullable: false),
                    epoch = table.Column<string>(type: "TEXT", nullable: false),
                    made_at_ms = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_epochs", x => x.number);
                });

            migrationBuilder.CreateTable(
                name: "facts",
                columns: table => new
                {
                    heat = table.Column<string>(type: "TEXT", nullable: false),
                    sequence = table.Column<long>(type: "INTEGER", nullable: false),
                    outbox = table.Column<string>(type: "TEXT", nullable: false),
                    counter = table.Column<long>(type: "INTEGER", nullable: false),
                    sender = table.Column<string>(type: "TEXT", nullable: false),
                    received_at_ms = table.Column<long>(type: "INTEGER", nullable: false),
                    body_hash = table.Column<string>(type: "TEXT", nullable: false),
                    body = table.Column<string>(type: "TEXT", nullable: false),
                    previous_hash = table.Column<string>(type: "TEXT", nullable: false),
                    hash = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_facts", x => new { x.heat, x.sequence });
                });

            migrationBuilder.CreateIndex(
                name: "IX_facts_outbox_counter",
                table: "facts",
                columns: new[] { "outbox", "counter" },
                unique: true);

            // By hand: a line that is on the ledger is never changed, whoever asks. A wrong fact is put right by a later one.
            migrationBuilder.Sql("CREATE TRIGGER facts_never_change BEFORE UPDATE ON facts BEGIN SELECT RAISE(ABORT, 'A line of the ledger is never changed.'); END;");
            migrationBuilder.Sql("CREATE TRIGGER facts_never_go BEFORE DELETE ON facts BEGIN SELECT RAISE(ABORT, 'A line of the ledger never goes.'); END;");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "epochs");

            migrationBuilder.DropTable(
                name: "facts");
        }
    }
}
